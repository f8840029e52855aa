using System.Globalization;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Houses;

/// <summary>
/// The house's principles, which know nothing of these studies, against published direct comparisons of muscle growth
/// (source column of the reference file; read from abstracts or excerpts). Hits and misses are both stated.
/// </summary>
public sealed class LongreachAgainstStudiesTests
{
    [Fact]
    public void Principles_find_the_direction_of_every_published_better_comparison_in_their_own_target()
    {
        var better = ReferenceTable.Rows("longreach-against-studies.csv").Where(row => row["verdict"] == "better" && row["principleGap"].Length > 0).ToList();
        better.Count.ShouldBeGreaterThanOrEqualTo(5);
        var misses = better.Where(row => Gap(row) <= 0).Select(row => $"{row["favoured"]} over {row["other"]}: {row["source"]}");
        misses.ShouldBeEmpty();
    }

    [Fact]
    public void Principles_expect_a_difference_where_studies_found_none_and_the_size_of_that_miss_is_known()
    {
        var same = ReferenceTable.Rows("longreach-against-studies.csv").Where(row => row["verdict"] == "same" && row["principleGap"].Length > 0).ToList();
        same.Count.ShouldBeGreaterThanOrEqualTo(4);

        // The reference file states the gap that an independent program computed for each pair: our own must equal it.
        same.ShouldAllBe(row => Math.Abs(Gap(row) - double.Parse(row["principleGap"], CultureInfo.InvariantCulture)) < 0.06);
        same.Average(row => Math.Abs(Gap(row))).ShouldBeGreaterThan(3);
    }

    private static double Gap(IReadOnlyDictionary<string, string> row)
    {
        var ranking = Judged.Longreach.Target(row["target"]);
        return ranking.Of(Judged.Longreach.Movement(row["favoured"]))!.PrincipleScore - ranking.Of(Judged.Longreach.Movement(row["other"]))!.PrincipleScore;
    }
}
