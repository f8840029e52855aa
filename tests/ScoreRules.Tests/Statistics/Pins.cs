using System.Globalization;
using System.Text.Json;
using ScoreRules.Tests.Support;
using ScoreRules.Tests.Weighting;
using Shouldly;

namespace ScoreRules.Tests.Statistics;

/// <summary>The outside numbers of <c>Reference/statistics</c>; their README names source and tolerance of each file.</summary>
internal static class Pins
{
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Rows(string file) => ReferenceTable.Rows($"statistics/{file}");

    public static JsonElement Json(string file) => JsonDocument.Parse(Repository.Read("tests", "ScoreRules.Tests", "Reference", "statistics", file)).RootElement;

    public static double Number(this IReadOnlyDictionary<string, string> row, string column) => double.Parse(row[column], CultureInfo.InvariantCulture);

    /// <summary>A number, or a fraction written as a text.</summary>
    public static double Value(this JsonElement element) => element.ValueKind == JsonValueKind.String ? Fraction.Of(element.GetString()!) : element.GetDouble();

    public static double[] Values(this JsonElement element) => [.. element.EnumerateArray().Select(Value)];

    public static double[][] Matrix(this JsonElement element) => [.. element.EnumerateArray().Select(Values)];

    /// <summary>Within a share of the expected value; at 0, within that much of 0.</summary>
    public static void ShouldBeWithin(this double actual, double expected, double relative, string what) =>
        actual.ShouldBe(expected, relative * (expected == 0 ? 1 : Math.Abs(expected)), what);
}
