using System.Globalization;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Statics;

/// <summary>Hand formulas with their results, each with its inputs in the row. Every row is worked out by the library.</summary>
public sealed class WorkedExampleTests
{
    private static readonly IReadOnlyList<IReadOnlyDictionary<string, string>> Rows = ReferenceTable.Rows("mechanics/statics-worked-examples.csv");

    public static TheoryData<string, double> Values() => [.. Rows.Select(row => (row["id"], double.Parse(row["value_full"], CultureInfo.InvariantCulture)))];

    [Fact]
    public void The_table_has_all_125_rows() => Rows.Select(row => row["id"]).Distinct(StringComparer.Ordinal).Count().ShouldBe(125);

    // Values are printed to six decimals; angles of a peak were found on a grid of about a thousandth of a degree.
    [Theory]
    [MemberData(nameof(Values))]
    public void The_library_gives_the_full_value(string id, double expected)
    {
        var tolerance = id.EndsWith("-peak", StringComparison.Ordinal) ? 0.002 : Math.Max(1e-6, 1e-6 * Math.Abs(expected));
        WorkedExamples.Of(id).ShouldNotBeNull(id).ShouldBe(expected, tolerance);
    }
}
