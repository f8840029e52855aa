namespace ScoreRules.Statistics.Effects;

/// <summary>
/// Effects of a study that measures the same people under two conditions. Positive when the first condition has the higher mean; for
/// growth from before to after, give the time after as the first.
/// </summary>
public static class RepeatedEffects
{
    /// <summary>Mean of the differences in the outcome's unit, variance (s1^2 + s2^2 - 2 r s1 s2) / n.</summary>
    public static EffectSize MeanChange(RepeatedSummary group) => new(Difference(group), group.DifferenceVariance / group.Count);

    /// <summary>Standardised by the deviation of the differences: J(n-1) (m1 - m2) / s_d, variance 1/n + g^2 / (2 n) (Gibbons, Hedeker and Davis 1993, Journal of Educational Statistics 18:271).</summary>
    public static EffectSize StandardisedByChange(RepeatedSummary group)
    {
        var g = Corrected(group, Math.Sqrt(group.DifferenceVariance));
        return new EffectSize(g, (1.0 / group.Count) + (g * g / (2.0 * group.Count)));
    }

    /// <summary>Standardised by the deviation of the first condition, equal deviations assumed: J(n-1) (m1 - m2) / s1, variance 2 (1 - r) / n + g^2 / (2 n) (Becker 1988, British Journal of Mathematical and Statistical Psychology 41:257).</summary>
    public static EffectSize StandardisedByFirst(RepeatedSummary group)
    {
        var g = Corrected(group, group.First.StandardDeviation);
        return new EffectSize(g, (2 * (1 - group.Correlation) / group.Count) + (g * g / (2.0 * group.Count)));
    }

    /// <summary>
    /// Standardised by the deviation of the first condition, unequal deviations allowed: g = J (m1 - m2) / s1 with J = J(n-1), variance
    /// J^2 (s_d^2 / (s1^2 (n-1)) + g^2 / (2 (n-1))) (Bonett 2008, Psychological Methods 13:99).
    /// </summary>
    public static EffectSize StandardisedByFirstUnequal(RepeatedSummary group)
    {
        var g = Corrected(group, group.First.StandardDeviation);
        var correction = SmallSampleCorrection.Exact(group.Count - 1);
        var inner = (group.DifferenceVariance / group.First.Variance) + (g * g / 2);
        return new EffectSize(g, correction * correction * inner / (group.Count - 1));
    }

    /// <summary>Logarithm of the ratio of means, variance s1^2/(n m1^2) + s2^2/(n m2^2) - 2 r s1 s2 / (n m1 m2) (Lajeunesse 2011, Ecology 92:2049).</summary>
    /// <exception cref="StatisticsInputException">A mean that is not above 0.</exception>
    public static EffectSize LogRatioOfMeans(RepeatedSummary group)
    {
        var (first, second) = (group.First, group.Second);
        var shared = 2 * group.Correlation * first.StandardDeviation * second.StandardDeviation / (group.Count * first.Mean * second.Mean);
        return new EffectSize(LogRatio.Of(first, second), LogRatio.RelativeVariance(first) + LogRatio.RelativeVariance(second) - shared);
    }

    private static double Difference(RepeatedSummary group) => group.First.Mean - group.Second.Mean;

    private static double Corrected(RepeatedSummary group, double deviation) => SmallSampleCorrection.Exact(group.Count - 1) * Difference(group) / deviation;
}
