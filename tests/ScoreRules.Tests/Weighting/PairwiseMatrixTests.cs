using System.Text.Json;
using ScoreRules.Tests.Support;
using ScoreRules.Weighting;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Weighting;

/// <summary>Against five worked tables of comparisons; the source stands beside each in the file (published to three decimals, worked out further by the file's author).</summary>
public sealed class PairwiseMatrixTests
{
    private static readonly JsonElement Reference = JsonDocument.Parse(Repository.Read("tests", "ScoreRules.Tests", "Reference", "weights-comparisons.json")).RootElement;

    public static TheoryData<string> Tables() => new(Reference.GetProperty("matrices").EnumerateArray().Select(table => table.GetProperty("name").GetString()!));

    [Theory]
    [MemberData(nameof(Tables))]
    public void Weights_and_indices_equal_the_worked_tables(string name)
    {
        var table = Table(name);
        var matrix = PairwiseMatrix.Of(Entries(table));

        matrix.LargestEigenvalue.ShouldBe(table.GetProperty("lambda_max").GetDouble(), 1e-9);
        matrix.ConsistencyIndex.ShouldBe(table.GetProperty("CI").GetDouble(), 1e-9);
        matrix.GeometricConsistencyIndex().ShouldBe(table.GetProperty("GCI").GetDouble(), 1e-9);
        matrix.GeometricMeans().ShouldBe(Numbers(table, "weights_row_geometric_mean"), 1e-9);
        matrix.Eigenvector().ShouldBe(Numbers(table, "weights_eigenvector"), 1e-9);
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void Least_squares_over_all_pairs_is_the_geometric_mean_and_the_ratio_that_of_the_named_table(string name)
    {
        var table = Table(name);
        var comparisons = Comparisons(Entries(table));
        var size = table.GetProperty("labels").GetArrayLength();

        LogLeastSquares.Shares(size, comparisons).ShouldBe(Numbers(table, "weights_row_geometric_mean"), 1e-9);
        ConsistencyRatio.Of(size, comparisons).Value.ShouldBe(table.GetProperty("CR").GetProperty("alonso_lamata2006_100000").GetDouble(), 1e-9);
    }

    [Fact]
    public void The_random_index_is_the_published_one()
    {
        foreach (var row in Reference.GetProperty("random_index").GetProperty("alonso_lamata2006_100000").EnumerateObject())
        {
            RandomIndex.Of(int.Parse(row.Name, System.Globalization.CultureInfo.InvariantCulture)).ShouldBe(row.Value.GetDouble());
        }
    }

    private static JsonElement Table(string name) => Reference.GetProperty("matrices").EnumerateArray().Single(table => table.GetProperty("name").GetString() == name);

    private static double[] Numbers(JsonElement table, string property) => [.. table.GetProperty(property).EnumerateArray().Select(number => number.GetDouble())];

    private static double[,] Entries(JsonElement table)
    {
        var rows = table.GetProperty("matrix").EnumerateArray().Select(row => row.EnumerateArray().Select(entry => Fraction.Of(entry.GetString()!)).ToArray()).ToArray();
        var entries = new double[rows.Length, rows.Length];
        for (var i = 0; i < rows.Length * rows.Length; i++)
        {
            entries[i / rows.Length, i % rows.Length] = rows[i / rows.Length][i % rows.Length];
        }

        return entries;
    }

    private static List<PairwiseComparison> Comparisons(double[,] entries) =>
    [
        .. from row in Enumerable.Range(0, entries.GetLength(0))
           from column in Enumerable.Range(row + 1, entries.GetLength(0) - row - 1)
           select new PairwiseComparison(row, column, entries[row, column]),
    ];
}
