using ScoreRules.Mechanics.Data;
using ScoreRules.Mechanics.Muscles;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Muscles;

/// <summary>What is shipped is what the reference says, and a fault in it is named with file and line.</summary>
public sealed class ShippedTableTests
{
    private const string Header = "part,first,firstLow,firstHigh,second,secondLow,secondHigh,shortest,longest,grade,source,coefficients";
    private const string Good = "one,knee flexion,0,90,,,,0.1,0.2,A,made up,0:0:0.1 1:0:0.06";

    [Fact]
    public void Each_part_but_subscapularis_is_shipped_with_its_box_and_grade()
    {
        var rows = ModelPart.Rows("muscle-index");
        MuscleModel.Parts.Select(part => part.Name).Order(StringComparer.Ordinal)
            .ShouldBe(rows.Select(row => row["muscle"].Replace('_', ' ')).Except(["subscapularis"]).Order(StringComparer.Ordinal));
        foreach (var row in rows.Where(row => row["muscle"] != "subscapularis"))
        {
            var part = ModelPart.Named(row["muscle"]);
            (part.First, part.Second).ShouldBe((Range(row, "q1")!.Value, Range(row, "q2")), part.Name);
            (part.Shortest, part.Longest).ShouldBe((ModelPart.Number(row["min_mtu_m"]), ModelPart.Number(row["max_mtu_m"])), part.Name);
            part.Reliability.ShouldBe((Reliability)("ABC".IndexOf(row["reliability"], StringComparison.Ordinal)), part.Name);
        }
    }

    [Fact]
    public void Each_muscle_has_the_parts_and_the_practical_range_of_the_reference()
    {
        var parts = ModelPart.Rows("muscle-parts").ToDictionary(row => row["muscle_in_catalogue"].Replace('_', ' '), row => row["model_parts"].Replace('_', ' '));
        var boxes = ModelPart.Rows("practical-length-box").ToDictionary(row => row["muscle"].Replace('_', ' '));
        MuscleModel.Muscles.Select(muscle => muscle.Name).Order(StringComparer.Ordinal).ShouldBe(parts.Keys.Order(StringComparer.Ordinal));
        foreach (var muscle in MuscleModel.Muscles)
        {
            string.Join(';', muscle.Parts.Select(part => part.Name)).ShouldBe(parts[muscle.Name]);
            muscle.PracticalShortest.ShouldBe(ModelPart.Number(boxes[muscle.Name]["practical_lo"]), muscle.Name);
            muscle.PracticalLongest.ShouldBe(ModelPart.Number(boxes[muscle.Name]["practical_hi"]), muscle.Name);
            muscle.Reliability.ShouldBe((Reliability)("ABC".IndexOf(boxes[muscle.Name]["grade"], StringComparison.Ordinal)), muscle.Name);
        }
    }

    [Theory]
    [InlineData("one,knee flexion,0,90,,,,0.1,0.2,A,made up", "parts.csv, line 3 has 11 cells instead of 12.")]
    [InlineData("one,knee,0,90,,,,0.1,0.2,A,made up,0:0:0.1", "parts.csv, line 3 has the angle \"knee\", which is not known.")]
    [InlineData("one,knee flexion,0,ninety,,,,0.1,0.2,A,made up,0:0:0.1", "parts.csv, line 3 has \"ninety\" for firstHigh, which is not a number.")]
    [InlineData("one,knee flexion,0,90,,,,0.1,0.2,D,made up,0:0:0.1", "parts.csv, line 3 has the grade \"D\" instead of A, B or C.")]
    [InlineData("one,knee flexion,0,90,,,,0.1,0.2,A,made up,0:0:0.1 1:0", "parts.csv, line 3 has the term \"1:0\" instead of two powers and a coefficient.")]
    [InlineData("one,knee flexion,0,90,,,,0.1,0.2,A,made up,0:0:NaN", "parts.csv, line 3 has \"NaN\" for a coefficient, which is not a number.")]
    [InlineData("one,shoulder plane,-90,135,shoulder elevation,0,150,0.1,0.2,A,made up,grid", "parts.csv, line 3 has no grid in muscle-grids.csv.")]
    public void A_fault_in_a_shipped_table_names_file_and_line(string row, string message)
    {
        var grids = EmbeddedTable.Parse("grids.csv", "part,elevation,0,15");
        Should.Throw<InvalidDataException>(() => MuscleReader.Parts(EmbeddedTable.Parse("parts.csv", $"{Header}\n{Good}\n{row}\n"), grids)).Message.ShouldBe(message);
    }

    [Fact]
    public void A_muscle_with_an_unknown_part_names_file_and_line()
    {
        var parts = MuscleReader.Parts(EmbeddedTable.Parse("parts.csv", $"{Header}\n{Good}\n"), EmbeddedTable.Parse("grids.csv", "part,elevation,0,15")).ToDictionary(part => part.Name);
        var muscles = EmbeddedTable.Parse("muscles.csv", "muscle,parts,practicalShortest,practicalLongest\nours,one;two,0,1\n");
        Should.Throw<InvalidDataException>(() => MuscleReader.Muscles(muscles, parts)).Message.ShouldBe("muscles.csv, line 2 names the part \"two\", which is not there.");
    }

    private static CoordinateRange? Range(IReadOnlyDictionary<string, string> row, string angle) => row[angle].Length == 0
        ? null
        : new CoordinateRange(ModelPart.Coordinate(row[angle]), ModelPart.Number(row[$"{angle}_min"]), ModelPart.Number(row[$"{angle}_max"]));
}
