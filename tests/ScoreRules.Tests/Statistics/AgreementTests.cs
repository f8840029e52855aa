using System.Text.Json;
using ScoreRules.Statistics;
using ScoreRules.Statistics.Agreement;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Statistics;

/// <summary>Agreement of rankings, natural classes and coverage, to 1e-10 or exactly.</summary>
public sealed class AgreementTests
{
    private const double Tolerance = 1e-10;

    private static readonly JsonElement Reference = Pins.Json("07-rank-agreement.json");

    [Fact]
    public void Rank_correlations_equal_the_reference()
    {
        foreach (var item in Reference.GetProperty("kendall_spearman").EnumerateArray())
        {
            var (x, y) = (item.GetProperty("x").Values(), item.GetProperty("y").Values());
            Same(RankCorrelation.TauB(x, y), item.GetProperty("tau_b"));
            Same(RankCorrelation.Rho(x, y), item.GetProperty("spearman_rho"));
        }
    }

    [Fact]
    public void Concordance_equals_the_reference()
    {
        foreach (var item in Reference.GetProperty("kendall_W").EnumerateArray())
        {
            var actual = Concordance.Of([.. item.GetProperty("ratings").Matrix()]);
            actual.RankSums.ShouldBe(item.GetProperty("rank_sums").Values(), Tolerance);
            actual.S.ShouldBe(item.GetProperty("s").GetDouble(), Tolerance);
            actual.Uncorrected.ShouldBe(item.GetProperty("W_uncorrected").GetDouble(), Tolerance);
            Same(actual.W, item.GetProperty("W_tie_corrected"));
            Same(actual.ChiSquared, item.GetProperty("friedman_chi2"));
            Same(actual.Probability, item.GetProperty("p"));
            Same(actual.MeanRho, item.GetProperty("mean_spearman"));
        }
    }

    [Fact]
    public void Rank_biased_overlap_equals_the_reference()
    {
        foreach (var item in Reference.GetProperty("rbo").EnumerateArray())
        {
            var actual = RankBiasedOverlap.Of(Letters(item, "a"), Letters(item, "b"), item.GetProperty("p").GetDouble());
            actual.AverageOverlap.ShouldBe(item.GetProperty("average_overlap").GetDouble(), Tolerance);
            actual.Truncated.ShouldBe(item.GetProperty("rbo_truncated").GetDouble(), Tolerance);
            actual.Extrapolated.ShouldBe(item.GetProperty("ext").GetDouble(), Tolerance);
            actual.Least.ShouldBe(item.GetProperty("min").GetDouble(), Tolerance);
            actual.Residual.ShouldBe(item.GetProperty("residual").GetDouble(), Tolerance);
        }

        var ties = Reference.GetProperty("rbo_ties");
        var tied = RankBiasedOverlap.OfGroups(Groups(ties, "a"), Groups(ties, "b"), ties.GetProperty("p").GetDouble());
        tied.Extrapolated.ShouldBe(ties.GetProperty("ext").GetDouble(), Tolerance);
        tied.Least.ShouldBe(ties.GetProperty("min").GetDouble(), Tolerance);
        tied.Residual.ShouldBe(ties.GetProperty("res").GetDouble(), Tolerance);
        foreach (var row in Pins.Rows("07-rbo-depth-weight.csv"))
        {
            RankBiasedOverlap.TopWeight(row.Number("p"), (int)row.Number("depth")).ShouldBe(row.Number("weight_of_top_ranks"), Tolerance);
        }
    }

    [Fact]
    public void Natural_breaks_of_102_counties_equal_the_reference()
    {
        double[] counties = [.. Pins.Rows("06-jenks71.csv").Select(row => row.Number("value"))];
        counties.Length.ShouldBe(102);
        foreach (var item in Pins.Json("06-jenks.json").GetProperty("exact_dp").EnumerateArray().Where(item => item.GetProperty("data").GetString() == "jenks71"))
        {
            var breaks = NaturalBreaks.Of(counties, item.GetProperty("k").GetInt32());
            breaks.Classes.Select(values => (double)values.Count).ShouldBe(item.GetProperty("class_sizes").Values());
            breaks.Classes.Select(values => values[0]).ShouldBe(item.GetProperty("class_min").Values());
            breaks.Classes.Select(values => values[^1]).ShouldBe(item.GetProperty("class_max").Values());
            breaks.SumOfSquares.ShouldBeWithin(item.GetProperty("ssw").GetDouble(), 1e-9, "sum of squares");
            breaks.GoodnessOfFit.ShouldBe(item.GetProperty("gvf").GetDouble(), Tolerance);
        }
    }

    [Fact]
    public void Natural_breaks_equal_all_ways_tried_and_take_the_lowest_borders_of_equals()
    {
        foreach (var item in Pins.Json("06-jenks.json").GetProperty("brute_force").EnumerateArray())
        {
            var breaks = NaturalBreaks.Of(item.GetProperty("values").Values(), item.GetProperty("k").GetInt32());
            breaks.SumOfSquares.ShouldBe(item.GetProperty("optimal_ssw").Value(), 1e-9);
            Shown(breaks.Classes).ShouldBe(Shown(Classes(item.GetProperty("optimal_partitions"))));
        }
    }

    [Fact]
    public void Greedy_coverage_equals_the_reference()
    {
        foreach (var item in Pins.Json("08-coverage.json").GetProperty("cases").EnumerateArray())
        {
            string[] items = [.. item.GetProperty("weights").EnumerateObject().Select(weight => weight.Name)];
            var sets = item.GetProperty("sets").EnumerateObject().ToList();
            var actual = Coverage.Greedy(
                [.. sets.Select(set => set.Value.EnumerateArray().Select(member => Array.IndexOf(items, member.ToString())).ToArray())],
                [.. item.GetProperty("weights").EnumerateObject().Select(weight => weight.Value.GetDouble())],
                item.GetProperty("k").GetInt32());
            actual.Value.ShouldBe(item.GetProperty("greedy_value").GetDouble());
            actual.Chosen.Select(place => sets[place].Name).ShouldBe(item.GetProperty("greedy_choice").EnumerateArray().Select(name => name.GetString()!));
        }

        Coverage.Greedy([[0], [0]], [1], 5).Chosen.ShouldBe([0]);
    }

    [Fact]
    public void What_cannot_be_compared_is_refused_in_words()
    {
        Says("Two lists of scores must be equally many, but are 2 and 1.", () => RankCorrelation.TauB([1, 2], [1])!);
        Says("A score must be a number, but is NaN.", () => RankCorrelation.Rho([1, double.NaN], [1, 2])!);
        Says("The number of judges must be at least 2, but is 1.", () => Concordance.Of([[1, 2]]));
        Says("A ranking names \"a\" twice.", () => RankBiasedOverlap.Of(["a", "a"], ["b", "c"], 0.9));
        Says("The persistence must lie between 0 and 1, but is 1.", () => RankBiasedOverlap.TopWeight(1, 3));
        Says("The number of different values for so many classes must be at least 3, but is 2.", () => NaturalBreaks.Of([1, 1, 2], 3));
        Says("The weight of an item must not be below 0, but is -1.", () => Coverage.Greedy([[0]], [-1], 1));
        Concordance.Of([[1, 1], [2, 2]]).W.ShouldBeNull();
    }

    private static void Says(string message, Func<object> make) => Should.Throw<StatisticsInputException>(() => make()).Message.ShouldBe(message);

    private static void Same(double? actual, JsonElement expected)
    {
        if (expected.ValueKind == JsonValueKind.Null)
        {
            actual.ShouldBeNull();
        }
        else
        {
            actual.ShouldNotBeNull().ShouldBe(expected.GetDouble(), Tolerance);
        }
    }

    private static string[] Letters(JsonElement item, string name) => [.. item.GetProperty(name).GetString()!.Select(letter => letter.ToString())];

    private static IReadOnlyList<IReadOnlyList<string>> Groups(JsonElement item, string name) =>
        [.. item.GetProperty(name).EnumerateArray().Select(group => (IReadOnlyList<string>)[.. group.EnumerateArray().Select(letter => letter.GetString()!)])];

    // The first of the equally good partitions; the file leaves out a level where there is a single class.
    private static double[][] Classes(JsonElement partitions) => partitions[0][0].ValueKind == JsonValueKind.Array ? partitions[0].Matrix() : partitions.Matrix();

    private static string Shown(IReadOnlyList<IReadOnlyList<double>> classes) => string.Join(" | ", classes.Select(values => string.Join(" ", values)));
}
