using ScoreRules.Mechanics.Muscles;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Muscles;

/// <summary>
/// Moment arms against those of the tables, which were taken from the models directly and not from the fitted lengths. A fit of length
/// says little about its slope at the ends, so only the inside of the ranges is held to a band. The band is our own choice.
/// </summary>
public sealed class MomentArmTableTests
{
    /// <summary>Root mean square over the rows of a part and angle, millimetres.</summary>
    private const double Band = 5;

    // Their knee moment arms jump in the table (up to 481 mm over a length that changes by 38 mm in all): a via point, not an anatomy.
    private static readonly string[] FaultsOfTheTable = ["gasmed", "gaslat"];

    public static TheoryData<string, int> Rows() =>
        [.. ModelPart.Rows("muscle-index").Where(row => row["muscle"] != "subscapularis").SelectMany(row => row["q2"].Length > 0 ? new[] { (row["muscle"], 1), (row["muscle"], 2) } : [(row["muscle"], 1)])
            .Where(row => row.Item2 == 2 || !FaultsOfTheTable.Contains(row.Item1))];

    [Theory]
    [MemberData(nameof(Rows))]
    public void Inside_its_ranges_the_moment_arms_of_a_part_keep_to_the_band(string name, int angle)
    {
        var part = ModelPart.Named(name);
        var rows = ModelPart.Rows("muscle-grid-every-third").Where(row => row["muscle"] == name && IsInside(part, row) && Table(row, angle) is not null).ToList();
        rows.Count.ShouldBeGreaterThan(1, name);
        Math.Sqrt(rows.Average(row => Math.Pow(Ours(part, row, angle) - Table(row, angle)!.Value, 2))).ShouldBeLessThan(Band);
    }

    [Fact]
    public void The_table_is_at_fault_where_we_say_so()
    {
        foreach (var name in FaultsOfTheTable)
        {
            var arms = ModelPart.Rows("muscle-grid-every-third").Where(row => row["muscle"] == name).Select(row => Table(row, 1)!.Value).ToList();
            (arms.Max() - arms.Min()).ShouldBeGreaterThan(25, name);
        }
    }

    private static double? Table(IReadOnlyDictionary<string, string> row, int angle) =>
        row[$"moment_arm_q{angle}_mm"] is { Length: > 0 } text ? ModelPart.Number(text) : null;

    // Where only the sign is of use the size is kept back; the slope itself is what is compared here.
    private static double Ours(MusclePart part, IReadOnlyDictionary<string, string> row, int angle)
    {
        var slope = part.SlopeAt(ModelPart.At(row)).Slope;
        return -1000 * (angle == 1 ? slope.X : slope.Y);
    }

    private static bool IsInside(MusclePart part, IReadOnlyDictionary<string, string> row) =>
        IsInside(part.First, row["q1_deg"]) && (part.Second is not { } second || IsInside(second, row["q2_deg"]));

    private static bool IsInside(CoordinateRange range, string degrees) => ModelPart.Number(degrees) > range.Low && ModelPart.Number(degrees) < range.High;
}
