using System.Globalization;
using ScoreRules.Statistics;
using ScoreRules.Statistics.Distributions;
using ScoreRules.Statistics.Pooling;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Statistics;

/// <summary>Seven published sets of studies, pooled in every way, pinned to a relative 1e-8.</summary>
public sealed class PoolingTests
{
    // The reference's ends of the Q-profile interval come from a root finder that stops within the fourth root of the machine precision;
    // the tests below hold them to the last digits by what they must satisfy.
    private const double LooseRoot = 1.3e-4;

    private static readonly Dictionary<string, HeterogeneityEstimator> Estimators = new(StringComparer.Ordinal)
    {
        ["DL"] = HeterogeneityEstimator.DerSimonianLaird,
        ["PM"] = HeterogeneityEstimator.PauleMandel,
        ["REML"] = HeterogeneityEstimator.RestrictedMaximumLikelihood,
        ["ML"] = HeterogeneityEstimator.MaximumLikelihood,
        ["HE"] = HeterogeneityEstimator.HedgesOlkin,
        ["EB"] = HeterogeneityEstimator.EmpiricalBayes,
        ["SJ"] = HeterogeneityEstimator.SidikJonkman,
        ["HS"] = HeterogeneityEstimator.HunterSchmidt,
    };

    private static readonly Dictionary<string, Func<CommonEffect, double>> Common = new(StringComparer.Ordinal)
    {
        ["k"] = pool => pool.Degrees + 1,
        ["QE"] = pool => pool.Q,
        ["QEp"] = pool => pool.QProbability,
        ["mu"] = pool => pool.Mean,
        ["se"] = pool => pool.StandardError,
        ["ci_lb"] = pool => pool.ConfidenceInterval(0.95).Lower,
        ["ci_ub"] = pool => pool.ConfidenceInterval(0.95).Upper,
        ["z"] = pool => pool.Z,
        ["p"] = pool => pool.Probability,
        ["I2_Q_percent"] = pool => 100 * pool.ISquared,
        ["H2_Q"] = pool => pool.HSquared,
    };

    private static readonly Dictionary<string, Func<RandomEffects, double>> Random = new(StringComparer.Ordinal)
    {
        ["tau2"] = pool => pool.TauSquared,
        ["tau"] = pool => pool.Tau,
        ["I2_percent"] = pool => 100 * pool.ISquared,
        ["H2"] = pool => pool.HSquared,
        ["mu"] = pool => pool.Mean,
        ["se"] = pool => pool.StandardError,
        ["z"] = pool => pool.Z,
        ["p"] = pool => pool.Probability,
        ["ci_lb"] = pool => pool.ConfidenceInterval(0.95).Lower,
        ["ci_ub"] = pool => pool.ConfidenceInterval(0.95).Upper,
        ["pi_lb_normal"] = pool => pool.PredictionByNormal(0.95).Lower,
        ["pi_ub_normal"] = pool => pool.PredictionByNormal(0.95).Upper,
        ["pi_lb_t_km2"] = pool => pool.PredictionByStudent(0.95).Lower,
        ["pi_ub_t_km2"] = pool => pool.PredictionByStudent(0.95).Upper,
    };

    private static readonly Dictionary<string, Func<RandomEffects, double>> Adjusted = new(StringComparer.Ordinal)
    {
        ["se"] = pool => pool.AdjustedForFewStudies(false).StandardError,
        ["t"] = pool => pool.AdjustedForFewStudies(false).T,
        ["df"] = pool => pool.AdjustedForFewStudies(false).Degrees,
        ["p"] = pool => pool.AdjustedForFewStudies(false).Probability,
        ["ci_lb"] = pool => pool.AdjustedForFewStudies(false).ConfidenceInterval(0.95).Lower,
        ["ci_ub"] = pool => pool.AdjustedForFewStudies(false).ConfidenceInterval(0.95).Upper,
        ["pi_lb_t_km1"] = pool => pool.AdjustedForFewStudies(false).Prediction(0.95).Lower,
        ["pi_ub_t_km1"] = pool => pool.AdjustedForFewStudies(false).Prediction(0.95).Upper,
        ["q_scale"] = pool => pool.Scale,
        ["se_floor_max1"] = pool => pool.AdjustedForFewStudies(true).StandardError,
    };

    private static readonly ILookup<string, StudyEffect> Sets =
        Pins.Rows("03-meta-datasets.csv").ToLookup(row => row["dataset"], row => new StudyEffect(row.Number("yi"), row.Number("vi")));

    public static TheoryData<string> Names() => new(Sets.Select(set => set.Key));

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_figure_of_a_set_equals_the_reference(string name)
    {
        List<StudyEffect> studies = [.. Sets[name]];
        var rows = Pins.Rows("03-meta-expected.csv").Where(row => row["dataset"] == name).ToList();
        rows.Count.ShouldBeGreaterThan(4);
        var worst = "";
        foreach (var row in rows)
        {
            var expected = row.Number("value");
            var actual = Figure(studies, row["method"], row["quantity"]);
            var tolerance = row["method"] == "Qprofile" ? LooseRoot : 1e-8 * (expected == 0 ? 1 : Math.Abs(expected));
            if (!(Math.Abs(actual - expected) <= tolerance))
            {
                worst += string.Create(CultureInfo.InvariantCulture, $"{row["method"]} {row["quantity"]}: expected {expected:R}, got {actual:R}\n");
            }
        }

        worst.ShouldBeEmpty();
    }

    /// <summary>By hand: effects 1 and 3 with variances 1 and 1 have mean 2, Q = 2, so tau squared = (2 - 1) / (2 - 2/2) = 1.</summary>
    [Fact]
    public void Two_studies_by_hand()
    {
        StudyEffect[] studies = [new(1, 1), new(3, 1)];
        var pool = RandomEffects.Of(studies, HeterogeneityEstimator.DerSimonianLaird);
        (pool.TauSquared, pool.Mean, pool.StandardError).ShouldBe((1, 2, 1));
        foreach (var estimator in Estimators.Values.Except([HeterogeneityEstimator.MaximumLikelihood, HeterogeneityEstimator.HunterSchmidt, HeterogeneityEstimator.SidikJonkman]))
        {
            TauSquared.Estimate(studies, estimator).ShouldBe(1, 1e-9, estimator.ToString());
        }
    }

    /// <summary>By hand: of two studies Q(tau squared) = d^2 / (v1 + v2 + 2 tau squared), so an end is (d^2 / c - v1 - v2) / 2, c the quantile of chi-squared with 1 degree of freedom, which is the square of the normal quantile at 0.5125, 0.031337982.</summary>
    [Fact]
    public void The_Q_profile_of_two_studies_by_hand()
    {
        var interval = TauSquared.QProfile([new(0.3, 0.04), new(0.5, 0.09)], 0.95);
        interval.Lower.ShouldBe(0);
        interval.Upper.ShouldBe(((0.04 / (0.03133798202142662 * 0.03133798202142662)) - 0.13) / 2, 1e-8);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void At_the_ends_of_a_Q_profile_the_tails_of_Q_are_as_stated(string name)
    {
        List<StudyEffect> studies = [.. Sets[name]];
        var interval = TauSquared.QProfile(studies, 0.9);
        ChiSquaredDistribution.Above(Q(interval.Upper), studies.Count - 1).ShouldBe(0.95, 1e-10);
        if (interval.Lower > 0)
        {
            ChiSquaredDistribution.Above(Q(interval.Lower), studies.Count - 1).ShouldBe(0.05, 1e-10);
        }

        double Q(double tauSquared)
        {
            var mean = studies.Sum(study => study.Effect / (study.Variance + tauSquared)) / studies.Sum(study => 1 / (study.Variance + tauSquared));
            return studies.Sum(study => (study.Effect - mean) * (study.Effect - mean) / (study.Variance + tauSquared));
        }
    }

    [Fact]
    public void Equal_effects_have_no_variance_between_studies() =>
        Estimators.Values.ShouldAllBe(estimator => TauSquared.Estimate(new StudyEffect[] { new(0.5, 0.1), new(0.5, 0.3), new(0.5, 0.2) }, estimator) == 0);

    [Fact]
    public void What_cannot_be_pooled_is_refused_in_words()
    {
        Should.Throw<StatisticsInputException>(() => new StudyEffect(1, -0.2)).Message.ShouldBe("The variance of a study must be above 0, but is -0.2.");
        Should.Throw<StatisticsInputException>(() => new StudyEffect(double.PositiveInfinity, 1)).Message.ShouldBe("The effect of a study must be a number, but is Infinity.");
        Should.Throw<StatisticsInputException>(() => CommonEffect.Of([new(1, 1)])).Message.ShouldBe("Pooling takes two studies or more; the result of one study stands by itself.");
        Should.Throw<StatisticsInputException>(() => RandomEffects.Of([new(1, 1), new(2, 1)], HeterogeneityEstimator.DerSimonianLaird).PredictionByStudent(0.95)).Message
            .ShouldBe("The number of studies for a prediction by Student's t must be at least 3, but is 2.");
        Should.Throw<StatisticsInputException>(() => TauSquared.QProfile([new(1, 1), new(2, 1)], 1)).Message.ShouldBe("The level of an interval must lie between 0 and 1, but is 1.");
    }

    private static double Figure(List<StudyEffect> studies, string method, string quantity) => (method, quantity) switch
    {
        ("FE", _) => Common[quantity](CommonEffect.Of(studies)),
        ("Qprofile", "tau2_lb") => TauSquared.QProfile(studies, 0.95).Lower,
        ("Qprofile", "tau2_ub") => TauSquared.QProfile(studies, 0.95).Upper,
        ("REML", "se_tau2") => TauSquared.StandardErrorOfRestricted(studies, TauSquared.Estimate(studies, Estimators[method])),
        _ when method.EndsWith("+HK", StringComparison.Ordinal) => Adjusted[quantity](RandomEffects.Of(studies, Estimators[method[..^3]])),
        _ => Random[quantity](RandomEffects.Of(studies, Estimators[method])),
    };
}
