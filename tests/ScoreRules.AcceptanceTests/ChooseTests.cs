using System.Text.Json;
using Shouldly;
using Xunit;

namespace ScoreRules.AcceptanceTests;

public sealed class ChooseTests
{
    private const string House = "rulesets/longreach";

    [Fact]
    public void The_choices_of_a_house_are_answered_and_one_that_cannot_be_says_why()
    {
        var outcome = Tool.Run("choose", House);
        outcome.ExitCode.ShouldBe(1, outcome.Errors);
        outcome.Output.ShouldContain("Seated leg curl");
        outcome.Output.ShouldContain("Needed for    one that is loaded short; 1 with movement pattern is knee");
        outcome.Output.ShouldContain("This page cannot judge a sore elbow; ask a licensed");
        outcome.Output.ShouldContain("In the way      one that is loaded long: none is left that could be chosen");
        outcome.Output.ShouldContain("Education, not medical advice.");
    }

    [Fact]
    public void Json_carries_the_movements_with_their_cautions_first()
    {
        using var json = JsonDocument.Parse(Tool.Run("choose", House, "--target", "hamstrings", "--count", "2", "--format", "json").Output);
        var choice = json.RootElement.GetProperty("choices")[0];
        choice.GetProperty("cautions").GetArrayLength().ShouldBeGreaterThan(0);
        choice.GetProperty("chosen").GetArrayLength().ShouldBe(2);
    }

    [Fact]
    public void Slips_on_the_command_line_are_told()
    {
        Tool.Run("choose", House, "--count", "2").Errors.ShouldContain("--count goes with --target or --week");
        Tool.Run("choose", House, "--week", "--target", "chest").Errors.ShouldContain("take --week or --target away");
        Tool.Run("choose", House, "--target", "chest", "--count", "some").Errors.ShouldContain("--count takes a whole number from 1 to 50");
    }
}
