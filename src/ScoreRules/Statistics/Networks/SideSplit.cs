using ScoreRules.Statistics.Distributions;
using ScoreRules.Statistics.Effects;

namespace ScoreRules.Statistics.Networks;

/// <summary>
/// What the studies of a pair itself say, and what all others say of it, by calculating back: 1/se_n^2 = 1/se_d^2 + 1/se_i^2 and the
/// network estimate the mean weighted by them (Dias, Welton, Caldwell and Ades 2010, Statistics in Medicine 29:932). Exact while the
/// pair is compared in studies of two arms; else the two sides share arms and the split is near, which <see cref="SharesArms"/> says.
/// </summary>
/// <param name="Direct">The pooled difference, first less second, in studies that compare the two.</param>
/// <param name="Indirect">The difference by all other chains; null when there is none.</param>
/// <param name="SharesArms">Whether a study of three arms or more takes part in the direct side.</param>
public sealed record SideSplit(EffectSize Direct, EffectSize? Indirect, bool SharesArms)
{
    // Below this share of the direct precision, what is left for the indirect side is rounding.
    private const double Nothing = 1e-10;

    /// <summary>Direct less indirect, in standard errors of that; null without an indirect side.</summary>
    public double? Z => Indirect is { } indirect ? (Direct.Value - indirect.Value) / Math.Sqrt(Direct.Variance + indirect.Variance) : null;

    /// <summary>Two-sided probability of <see cref="Z"/>.</summary>
    public double? Probability => Z is { } z ? NormalDistribution.TwoSided(z) : null;

    /// <summary>Splits the evidence on a pair.</summary>
    /// <param name="fit">The network, fitted.</param>
    /// <param name="network">The studies it was fitted to.</param>
    /// <param name="first">A treatment.</param>
    /// <param name="second">Another one.</param>
    /// <returns>The split; null when no study compares the two.</returns>
    /// <exception cref="StatisticsInputException">A treatment that is not in the network, or one treatment twice.</exception>
    public static SideSplit? Of(NetworkFit fit, TreatmentNetwork network, string first, string second)
    {
        if (network.Place(first) == network.Place(second))
        {
            throw new StatisticsInputException($"A split needs two treatments, but \"{first}\" was given twice.");
        }

        var own = network.Studies.Where(study => study.Treatments.Contains(first) && study.Treatments.Contains(second)).ToList();
        if (own.Count == 0)
        {
            return null;
        }

        var direct = Pooled(own.Select(study => study.Between(first, second)), fit.TauSquared);
        var error = fit.StandardError(first, second);
        return new SideSplit(direct, Rest(new EffectSize(fit.Difference(first, second), error * error), direct), own.Exists(study => study.Treatments.Count > 2));
    }

    private static EffectSize Pooled(IEnumerable<(double Difference, double Variance)> results, double tauSquared)
    {
        var (weight, sum) = (0.0, 0.0);
        foreach (var (difference, variance) in results)
        {
            weight += 1 / (variance + tauSquared);
            sum += difference / (variance + tauSquared);
        }

        return new EffectSize(sum / weight, 1 / weight);
    }

    private static EffectSize? Rest(EffectSize all, EffectSize direct)
    {
        var precision = (1 / all.Variance) - (1 / direct.Variance);
        return precision > Nothing / direct.Variance
            ? new EffectSize(((all.Value / all.Variance) - (direct.Value / direct.Variance)) / precision, 1 / precision)
            : null;
    }
}
