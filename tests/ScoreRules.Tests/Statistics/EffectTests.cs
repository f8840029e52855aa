using ScoreRules.Statistics;
using ScoreRules.Statistics.Effects;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Statistics;

/// <summary>Effects of single studies, pinned to 1e-9.</summary>
public sealed class EffectTests
{
    private const double Tolerance = 1e-9;

    [Fact]
    public void Two_groups_equal_the_reference()
    {
        foreach (var row in Pins.Rows("03-effect-sizes.csv"))
        {
            var first = new GroupSummary(row.Number("m1"), row.Number("sd1"), (int)row.Number("n1"));
            var second = new GroupSummary(row.Number("m2"), row.Number("sd2"), (int)row.Number("n2"));
            var degrees = first.Count + second.Count - 2;
            Check("pooled_sd", TwoGroupEffects.PooledDeviation(first, second));
            Check("J_exact", SmallSampleCorrection.Exact(degrees));
            Check("J_approx", SmallSampleCorrection.Approximate(degrees));
            Pair("cohen_d", "var_d_borenstein", TwoGroupEffects.CohenD(first, second));
            Pair("g_exact", "v_g_LS", TwoGroupEffects.HedgesG(first, second));
            Pair("g_approx", "var_g_borenstein", TwoGroupEffects.HedgesGApproximate(first, second));
            Pair("lnRR", "v_lnRR", TwoGroupEffects.LogRatioOfMeans(first, second));
            Pair("MD", "v_MD", TwoGroupEffects.MeanDifference(first, second));

            void Check(string column, double actual) => actual.ShouldBeWithin(row.Number(column), Tolerance, $"{row["id"]} {column}");
            void Pair(string value, string variance, EffectSize actual)
            {
                Check(value, actual.Value);
                Check(variance, actual.Variance);
            }
        }
    }

    [Fact]
    public void Change_against_a_control_group_equals_the_reference()
    {
        foreach (var row in Pins.Rows("03-effect-sizes-prepost.csv"))
        {
            var treated = Group("t");
            var control = Group("c");
            Check("sd_pre_pooled", ControlledChangeEffects.PooledDeviationBefore(treated, control));
            Pair("g_ppc2", "v_ppc2", ControlledChangeEffects.HedgesG(treated, control, row.Number("t_r")));
            foreach (var (group, letter) in new[] { (treated, "t"), (control, "c") })
            {
                var turned = new RepeatedSummary(group.Second.Mean, group.First.Mean, group.First.StandardDeviation, group.Second.StandardDeviation, group.Count, group.Correlation);
                Pair($"SMCR_{letter}.yi", $"SMCR_{letter}.vi", RepeatedEffects.StandardisedByFirst(turned));
                Pair($"SMCC_{letter}.yi", $"SMCC_{letter}.vi", RepeatedEffects.StandardisedByChange(turned));
            }

            RepeatedSummary Group(string letter) => new(
                row.Number($"{letter}_m_pre"), row.Number($"{letter}_m_post"), row.Number($"{letter}_sd_pre"), row.Number($"{letter}_sd_post"), (int)row.Number($"{letter}_n"), row.Number($"{letter}_r"));
            void Check(string column, double actual) => actual.ShouldBeWithin(row.Number(column), Tolerance, $"{row["study"]} {column}");
            void Pair(string value, string variance, EffectSize actual)
            {
                Check(value, actual.Value);
                Check(variance, actual.Variance);
            }
        }
    }

    [Fact]
    public void The_same_people_twice_equal_the_reference()
    {
        var makers = new Dictionary<string, Func<RepeatedSummary, EffectSize>>(StringComparer.Ordinal)
        {
            ["MC"] = RepeatedEffects.MeanChange,
            ["SMCC"] = RepeatedEffects.StandardisedByChange,
            ["SMCRH"] = RepeatedEffects.StandardisedByFirstUnequal,
            ["ROMC"] = RepeatedEffects.LogRatioOfMeans,
        };
        foreach (var row in Pins.Rows("03-effect-sizes-within-subject.csv"))
        {
            var group = new RepeatedSummary(row.Number("m1"), row.Number("m2"), Math.Sqrt(row.Number("var1")), Math.Sqrt(row.Number("var2")), (int)row.Number("n"), row.Number("r"));
            var effect = makers[row["measure"]](group);
            effect.Value.ShouldBeWithin(row.Number("yi"), Tolerance, row["measure"]);
            effect.Variance.ShouldBeWithin(row.Number("vi"), Tolerance, row["measure"]);
        }
    }

    /// <summary>By hand: J(2) = gamma(1) / (1 gamma(1/2)) = 1 / sqrt(pi); J(4) = gamma(2) / (sqrt(2) gamma(3/2)) = sqrt(2 / pi).</summary>
    [Fact]
    public void The_exact_correction_of_few_people_has_closed_forms()
    {
        SmallSampleCorrection.Exact(2).ShouldBe(1 / Math.Sqrt(Math.PI), 1e-14);
        SmallSampleCorrection.Exact(4).ShouldBe(Math.Sqrt(2 / Math.PI), 1e-14);
    }

    [Fact]
    public void What_no_effect_can_be_made_from_is_refused_in_words()
    {
        Says("The standard deviation of a group must be above 0, but is 0.", () => new GroupSummary(4, 0, 5));
        Says("The standard deviation of a group must be above 0, but is -1.", () => new GroupSummary(4, -1, 5));
        Says("The number of people in a group must be at least 2, but is 1.", () => new GroupSummary(4, 1, 1));
        Says("The mean of a group must be a number, but is NaN.", () => new GroupSummary(double.NaN, 1, 5));
        Says("The correlation between the two measurements must lie between -1 and 1, but is 1.", () => new RepeatedSummary(1, 2, 1, 1, 9, 1));
        Says("A mean in a ratio of means must be above 0, but is -2.", () => TwoGroupEffects.LogRatioOfMeans(new GroupSummary(3, 1, 5), new GroupSummary(-2, 1, 5)));
        Says("The degrees of freedom of a standard deviation must be at least 2, but is 1.", () => RepeatedEffects.StandardisedByChange(new RepeatedSummary(1, 2, 1, 1, 2, 0.5)));
    }

    private static void Says(string message, Func<object> make) => Should.Throw<StatisticsInputException>(() => make()).Message.ShouldBe(message);
}
