using Shouldly;
using Xunit;

namespace ScoreRules.AcceptanceTests;

public sealed class FixTests
{
    private const string Faulty = "say a touch menas 2,5 points\n\ncriterion x\n  wieght 3\n";
    private const string Mended = "say a touch means 2.5 points\n\ncriterion x\n  wieght 3\n";

    [Fact]
    public void Safe_edits_are_made_round_by_round_and_told_by_file_and_line()
    {
        using var house = new TemporaryHouse(Faulty);
        var outcome = Tool.RunIn(house.Path, "", "fix", ".");
        house.Read("house.rules").ShouldBe(Mended);
        outcome.Output.ShouldStartWith("house.rules:1: Numbers are written with a point here, so this reads as two numbers: write 2.5\nhouse.rules:1: \"menas\" does not fit here: did you mean \"means\"?\n");
        outcome.Errors.ShouldContain("2 edits in 1 file");
        outcome.ExitCode.ShouldBe(1, "an error is left that has no safe edit");
        Directory.GetFiles(house.Path).Length.ShouldBe(1);
    }

    [Fact]
    public void A_dry_run_tells_the_same_and_changes_nothing()
    {
        using var house = new TemporaryHouse(Faulty);
        var outcome = Tool.RunIn(house.Path, "", "fix", ".", "--dry-run");
        outcome.Output.ShouldContain("house.rules:1: \"menas\" does not fit here");
        outcome.Errors.ShouldContain("2 edits in 1 file, not made");
        house.Read("house.rules").ShouldBe(Faulty);
    }

    [Fact]
    public void Only_the_file_named_is_changed()
    {
        using var house = new TemporaryHouse(Faulty);
        house.Write("other.rules", "say b menas 3 points\n");
        Tool.RunIn(house.Path, "", "fix", "./other.rules").Errors.ShouldContain("1 safe edit left in other files");
        house.Read("house.rules").ShouldBe(Faulty);
        house.Read("other.rules").ShouldBe("say b means 3 points\n");
    }

    [Fact]
    public void A_house_without_faults_is_left_alone()
    {
        var outcome = Tool.Run("fix", "rulesets/longreach", "--dry-run");
        outcome.ExitCode.ShouldBe(0, outcome.Errors);
        outcome.Output.ShouldBeEmpty();
        outcome.Errors.ShouldStartWith("Nothing to change; after that no errors, no warnings");
    }

    [Fact]
    public void A_read_only_file_is_refused_and_stays_as_it_is()
    {
        using var house = new TemporaryHouse(Faulty);
        var file = Path.Combine(house.Path, "house.rules");
        File.SetAttributes(file, FileAttributes.ReadOnly);
        var outcome = Tool.RunIn(house.Path, "", "fix", ".");
        outcome.ExitCode.ShouldBe(2);
        outcome.Errors.ShouldContain("\"house.rules\" may not be changed: it is marked read-only.");
        house.Read("house.rules").ShouldBe(Faulty);
        File.SetAttributes(file, FileAttributes.Normal);
    }

    [Theory]
    [InlineData("There is no folder or file \"rulesets/longrech\"", "rulesets/longrech")]
    [InlineData("holds no rule text", "docs")]
    [InlineData("Too many names", "rulesets/longreach", "rulesets/shared")]
    [InlineData("There is no option \"--dry\"", "rulesets/longreach", "--dry")]
    public void Wrong_use_ends_with_code_2_and_a_sentence(string sentence, params string[] arguments)
    {
        var outcome = Tool.Run(["fix", .. arguments]);
        outcome.ExitCode.ShouldBe(2, outcome.Output);
        outcome.Errors.ShouldContain(sentence);
    }
}
