using Shouldly;
using Xunit;

namespace ScoreRules.AcceptanceTests;

public sealed class TeachTests
{
    [Fact]
    public void The_script_begins_with_cautions_and_tells_every_movement_beside_its_cousin()
    {
        var outcome = Tool.Run("teach", "rulesets/longreach", "hamstrings");
        outcome.ExitCode.ShouldBe(0, outcome.Errors);
        outcome.Output.ShouldStartWith("# A lesson: hamstrings\n\nLongreach, version 3.0.0, edition ");
        outcome.Output.Split("\n## ").Length.ShouldBe(1 + 1 + 12 + 1);
        var second = outcome.Output.Split("\n## ")[3];
        second.ShouldStartWith("2. Standing leg curl\n\n**First:** Set where the machine starts");
        second.ShouldContain("Beside the lying leg curl, 79 % alike.");
        second.ShouldContain("**Down by 1.0 to 63.2 points.**");
        second.ShouldContain("| one side at a time | +3.0 | Unilateral; lying leg curl bilateral. |");
        outcome.Output.ShouldContain("**Stop:** Stop if a movement causes sharp, radiating or joint pain");
    }

    [Theory]
    [InlineData("html")]
    [InlineData("slides")]
    public void A_page_is_written_whole_and_its_place_is_said(string format)
    {
        using var place = new TemporaryHouse("", "old.html");
        var file = Path.Combine(place.Path, "old.html");
        var outcome = Tool.Run("teach", "rulesets/linden-court", "quadriceps", "--format", format, "--out", file);
        outcome.ExitCode.ShouldBe(0, outcome.Errors);
        outcome.Output.ShouldBe(file + "\n");
        place.Read("old.html").ShouldStartWith("<!DOCTYPE html>");
        place.Read("old.html").ShouldContain("Have a chair, a rail or a person within reach");
    }

    [Theory]
    [InlineData("Which target? Type: scorerules teach rulesets/longreach TARGET.", "rulesets/longreach")]
    [InlineData("There is no target \"hamstring\". Did you mean \"hamstrings\"?", "rulesets/longreach", "hamstring")]
    [InlineData("HOUSE TARGET is missing.")]
    [InlineData("There is no form \"pdf\"", "rulesets/longreach", "hamstrings", "--format", "pdf")]
    [InlineData("is a folder. Name a file in it.", "rulesets/longreach", "hamstrings", "--out", "docs")]
    public void Wrong_use_ends_with_code_2_and_a_sentence(string sentence, params string[] arguments)
    {
        var outcome = Tool.Run(["teach", .. arguments]);
        outcome.ExitCode.ShouldBe(2, outcome.Output);
        outcome.Errors.ShouldContain(sentence);
    }
}
