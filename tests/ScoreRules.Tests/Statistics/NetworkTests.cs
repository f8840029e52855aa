using ScoreRules.Statistics;
using ScoreRules.Statistics.Effects;
using ScoreRules.Statistics.Networks;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Statistics;

/// <summary>Two published networks, pinned to a relative 1e-7.</summary>
public sealed class NetworkTests
{
    private const double Tolerance = 1e-7;

    private static readonly Lazy<TreatmentNetwork> SennArms = new(() => ByArms("04-nma-senn2013-arms.csv"));
    private static readonly Lazy<TreatmentNetwork> SennPairs = new(ByPairs);
    private static readonly Lazy<TreatmentNetwork> Parkinson = new(() => ByArms("04-nma-parkinson-arms.csv"));

    public static TheoryData<string> Blocks() => new("arm_common", "arm_DL", "arm_REML", "netmeta_data_common", "netmeta_data_DL");

    [Theory]
    [MemberData(nameof(Blocks))]
    public void A_network_of_26_studies_equals_the_reference(string block)
    {
        var network = block.StartsWith("arm", StringComparison.Ordinal) ? SennArms.Value : SennPairs.Value;
        var fit = block.Split('_')[^1] switch
        {
            "DL" => NetworkFit.Random(network, NetworkTauSquared.DerSimonianLaird(network)),
            "REML" => NetworkFit.Random(network, NetworkTauSquared.RestrictedMaximumLikelihood(network)),
            _ => NetworkFit.Common(network),
        };
        var rows = Pins.Rows("04-nma-senn2013-expected.csv").Where(row => row["block"] == block).ToList();
        rows.Count.ShouldBeGreaterThan(25);
        foreach (var row in rows)
        {
            // A difference of two nearly equal effects is only known to the digits of the effects: its standard error sets the scale.
            var scale = row["quantity"] == "league_effect" ? Math.Max(Math.Abs(row.Number("value")), fit.StandardError(row["a"], row["b"])) : Math.Abs(row.Number("value"));
            Figure(network, fit, row).ShouldBe(row.Number("value"), Tolerance * scale, $"{block} {row["quantity"]} {row["a"]} {row["b"]}");
        }
    }

    [Fact]
    public void Sides_of_a_pair_equal_the_reference()
    {
        var fit = NetworkFit.Common(SennArms.Value);
        foreach (var row in Pins.Rows("04-nma-senn2013-expected.csv").Where(row => row["block"] == "backcalc_common"))
        {
            var split = SideSplit.Of(fit, SennArms.Value, row["a"], row["b"]).ShouldNotBeNull();
            var actual = row["quantity"] switch
            {
                "direct" => split.Direct.Value,
                "se_direct" => split.Direct.StandardError,
                "indirect" => split.Indirect!.Value.Value,
                "se_indirect" => split.Indirect!.Value.StandardError,
                "z" => split.Z!.Value,
                _ => split.Probability!.Value,
            };
            actual.ShouldBeWithin(row.Number("value"), Tolerance, $"{row["quantity"]} {row["a"]} {row["b"]}");
            split.SharesArms.ShouldBeFalse();
        }
    }

    [Fact]
    public void A_network_with_a_study_of_three_arms_equals_the_reference()
    {
        var network = Parkinson.Value;
        var fit = NetworkFit.Common(network);
        foreach (var row in Pins.Rows("04-nma-parkinson-expected.csv"))
        {
            var actual = row["quantity"] switch
            {
                "effect_vs_A" => fit.Difference(row["treatment"], "A"),
                "se_vs_A" => fit.StandardError(row["treatment"], "A"),
                "P_score_small_good" => fit.PScore(row["treatment"], higherIsBetter: false),
                "Q_total" => fit.Q,
                _ => fit.Degrees,
            };
            actual.ShouldBeWithin(row.Number("value"), Tolerance, $"{row["quantity"]} {row["treatment"]}");
        }
    }

    /// <summary>By hand: three arms with means 0, 1, 3 and variance 1 each; the differences stay, each with variance 2, whatever arm comes first.</summary>
    [Fact]
    public void A_single_study_is_its_own_network()
    {
        var network = TreatmentNetwork.Of([NetworkStudy.FromArms("one", [new("b", 1, 1), new("c", 3, 1), new("a", 0, 1)])]);
        var fit = NetworkFit.Common(network);
        fit.Difference("c", "a").ShouldBe(3, 1e-12);
        fit.StandardError("c", "b").ShouldBe(Math.Sqrt(2), 1e-12);
        fit.Degrees.ShouldBe(0);
        DesignSplit.Of(network).BetweenProbability.ShouldBeNull();
        var split = SideSplit.Of(fit, network, "a", "b")!;
        (split.Indirect, split.SharesArms).ShouldBe((null, true));
        Should.Throw<StatisticsInputException>(() => NetworkTauSquared.DerSimonianLaird(network)).Message.ShouldStartWith("No comparison of this network was made twice");
    }

    [Fact]
    public void Bad_networks_are_refused_in_words()
    {
        Says("No study joins the parts of this network: a, b; c, d. Look at each part by itself, or add a study between them.", () => TreatmentNetwork.Of([Two("x", "a", "b"), Two("y", "d", "c")]));
        Says("The study \"x\" has one arm; a comparison takes two.", () => NetworkStudy.FromArms("x", [new("a", 1, 1)]));
        Says("The study \"x\" has \"a\" twice; give one arm to each treatment.", () => Two("x", "a", "a"));
        Says("The variance of the mean of a must be above 0, but is -1.", () => new Arm("a", 1, -1));
        Says("The study \"x\" does not report b and c; give every pair of its treatments.", () => NetworkStudy.FromDifferences("x", [new("a", "b", 1, 1), new("a", "c", 1, 1)]));
        Says("The differences of \"x\" do not add up between a, b and c.", () => NetworkStudy.FromDifferences("x", [new("a", "b", 1, 1), new("a", "c", 1, 1), new("b", "c", 1, 1)]));
        Says("The standard errors of \"x\" cannot belong to one study: one is larger than the others allow.", () => NetworkStudy.FromDifferences("x", [new("a", "b", 1, 1), new("a", "c", 1, 1), new("b", "c", 0, 2.5)]));
        Says("No study of this network has the treatment \"z\".", () => NetworkFit.Common(Parkinson.Value).Difference("A", "z"));
        Says("A network takes at least one study.", () => TreatmentNetwork.Of([]));
    }

    [Fact]
    public void The_order_of_studies_does_not_matter()
    {
        var turned = TreatmentNetwork.Of(SennArms.Value.Studies.Reverse());
        NetworkFit.Common(turned).Difference("metformin", "placebo").ShouldBe(NetworkFit.Common(SennArms.Value).Difference("metformin", "placebo"));
    }

    private static NetworkStudy Two(string name, string first, string second) => NetworkStudy.FromArms(name, [new(first, 0, 1), new(second, 1, 1)]);

    private static void Says(string message, Func<object> make) => Should.Throw<StatisticsInputException>(() => make()).Message.ShouldBe(message);

    private static double Figure(TreatmentNetwork network, NetworkFit fit, IReadOnlyDictionary<string, string> row) => row["quantity"] switch
    {
        "Q_total" => fit.Q,
        "df" => fit.Degrees,
        "tau2" => fit.TauSquared,
        "tau" => Math.Sqrt(fit.TauSquared),
        "I2_percent" => 100 * NetworkFit.Common(network).ISquared,
        "P_score_small_good" => fit.PScore(row["a"], higherIsBetter: false),
        "effect_vs_placebo" or "league_effect" => fit.Difference(row["a"], row["b"]),
        "se_vs_placebo" or "league_se" => fit.StandardError(row["a"], row["b"]),
        "ci_lb" => fit.ConfidenceInterval(row["a"], row["b"], 0.95).Lower,
        "ci_ub" => fit.ConfidenceInterval(row["a"], row["b"], 0.95).Upper,
        "Q_within_design" => DesignSplit.Of(network).Within.Single(design => design.Design == row["a"]).Q,
        "df_within_design" => DesignSplit.Of(network).Within.Single(design => design.Design == row["a"]).Degrees,
        "Q_within" => DesignSplit.Of(network).QWithin,
        "df_within" => DesignSplit.Of(network).DegreesWithin,
        "Q_between" => DesignSplit.Of(network).QBetween,
        "df_between" => DesignSplit.Of(network).DegreesBetween,
        "p_between" => DesignSplit.Of(network).BetweenProbability!.Value,
        _ => throw new InvalidOperationException(row["quantity"]),
    };

    private static TreatmentNetwork ByArms(string file) => TreatmentNetwork.Of(Pins.Rows(file).GroupBy(row => row["study"])
        .Select(study => NetworkStudy.FromArms(study.Key, [.. study.Select(row => Arm.Of(row["treatment"], new GroupSummary(row.Number("mean"), row.Number("sd"), (int)row.Number("n"))))])));

    private static TreatmentNetwork ByPairs() => TreatmentNetwork.Of(Pins.Rows("04-nma-senn2013-contrasts.csv").GroupBy(row => row["study"])
        .Select(study => NetworkStudy.FromDifferences(study.Key, [.. study.Select(row => new ReportedDifference(row["treat1"], row["treat2"], row.Number("TE"), row.Number("seTE")))])));
}
