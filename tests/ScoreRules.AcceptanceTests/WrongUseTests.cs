using Shouldly;
using Xunit;

namespace ScoreRules.AcceptanceTests;

/// <summary>What a person who types the wrong thing gets: exit code 2 and a sentence that helps, never a stack trace.</summary>
public sealed class WrongUseTests
{
    [Theory]
    [InlineData("There is no folder or file \"rulesets/longrech\"", "rank", "rulesets/longrech")]
    [InlineData("Did you mean \"longreach\"?", "rank", "rulesets/longrech")]
    [InlineData("holds no rule text", "rank", "docs")]
    [InlineData("There is no movement \"seated leg kurl\" in this house. Did you mean \"seated leg curl\"?", "explain", "rulesets/longreach", "seated leg kurl")]
    [InlineData("There is no target \"hamstrngs\". Did you mean \"hamstrings\"?", "rank", "rulesets/longreach", "--target", "hamstrngs")]
    [InlineData("is not ranked there. It trains hamstrings", "explain", "rulesets/longreach", "seated leg curl", "--target", "calves")]
    [InlineData("There is no option \"--bogus\"", "check", "rulesets/longreach", "--bogus")]
    [InlineData("There is no form \"yaml\". Forms are: text, json, markdown, csv.", "rank", "rulesets/longreach", "--format", "yaml")]
    [InlineData("Which movement?", "explain", "rulesets/longreach")]
    [InlineData("Too many names", "explain", "rulesets/longreach", "seated", "leg", "curl")]
    [InlineData("HOUSE MOVEMENT is missing", "explain")]
    [InlineData("did you mean \"rank\"", "rnk", "rulesets/longreach")]
    [InlineData("There is no code \"SR9\"", "code", "SR9")]
    [InlineData("Name a house", "rank")]
    public void Wrong_use_ends_with_code_2_and_a_sentence(string sentence, params string[] arguments)
    {
        var outcome = Tool.Run(arguments);
        outcome.ExitCode.ShouldBe(2, outcome.Output);
        outcome.Errors.ShouldContain(sentence);
        outcome.Errors.ShouldNotContain("   at ");
        outcome.Output.ShouldBeEmpty();
    }

    [Fact]
    public void A_file_stands_for_its_folder()
    {
        var outcome = Tool.Run("check", "rulesets/longreach/house.rules");
        outcome.ExitCode.ShouldBe(0, outcome.Output + outcome.Errors);
        outcome.Output.ShouldContain("130 movements");
    }

    [Fact]
    public void Errors_stop_a_ranking_with_code_1_and_all_messages()
    {
        using var house = new TemporaryHouse("movement a\n  trains nowhere\n  bogus is 3\n\ncriterion x\n  counts 2,5\n");
        var outcome = Tool.RunIn(house.Path, "", "rank", ".");
        outcome.ExitCode.ShouldBe(1);
        outcome.Output.ShouldBeEmpty();
        outcome.Errors.ShouldContain("\"nowhere\" is not a target");
        outcome.Errors.ShouldContain("\"bogus\" is not something a movement can be described by");
        outcome.Errors.ShouldContain("write 2.5");
        outcome.Errors.ShouldContain("Nothing is ranked until the errors are mended.");
    }

    [Fact]
    public void Rule_text_can_be_checked_from_standard_input()
    {
        var outcome = Tool.RunIn(Path.GetTempPath(), "criterion x\n  wieght 3\n", "check", "-", "--format", "short");
        outcome.ExitCode.ShouldBe(1);
        outcome.Output.ShouldContain("(standard input):2:3: error SR1004");
    }

    [Fact]
    public void Help_lists_the_commands()
    {
        var outcome = Tool.Run("--help");
        outcome.ExitCode.ShouldBe(0);
        foreach (var command in new[] { "check", "rank", "explain", "test", "new", "words", "fix", "format", "code", "completion" })
        {
            outcome.Output.ShouldContain("  " + command);
        }
    }
}
