using System.Globalization;
using ScoreRules.Tests.Support;
using ScoreRules.Weighting;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Weighting;

/// <summary>Against exact fractions for 1 to 15 things; the source stands in each row.</summary>
public sealed class RankOrderWeightsTests
{
    private static readonly List<IReadOnlyDictionary<string, string>> Rows = [.. ReferenceTable.Rows("weights-rank-order.csv")];

    [Theory]
    [InlineData("roc_exact")]
    [InlineData("rank_sum_exact")]
    [InlineData("rank_reciprocal_exact")]
    public void Weights_equal_the_exact_fractions(string column)
    {
        Rows.Count.ShouldBe(120);
        foreach (var row in Rows)
        {
            var (count, rank) = (int.Parse(row["n"], CultureInfo.InvariantCulture), int.Parse(row["rank"], CultureInfo.InvariantCulture));
            Weights(column, count)[rank - 1].ShouldBe(Fraction.Of(row[column]), 1e-12, $"{column} {count} {rank}");
        }
    }

    private static double[] Weights(string column, int count) => column switch
    {
        "roc_exact" => RankOrderWeights.Centroid(count),
        "rank_sum_exact" => RankOrderWeights.Sum(count),
        _ => RankOrderWeights.Reciprocal(count),
    };
}
