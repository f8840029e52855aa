using Shouldly;
using Xunit;

namespace ScoreRules.AcceptanceTests;

public sealed class FormatTests
{
    private const string Untidy = "CRITERION  x\r\n      counts   3\r\n  reads y\r\n worth 0 % at 0 ,100% at 4\r\n";
    private const string Tidy = "criterion x\n  counts 3\n  reads y\n  worth 0% at 0, 100% at 4\n";

    [Fact]
    public void A_folder_is_laid_out_in_place_and_the_second_time_nothing_changes()
    {
        using var house = new TemporaryHouse(Untidy);
        var first = Tool.RunIn(house.Path, "", "format", ".");
        first.ExitCode.ShouldBe(0, first.Errors);
        first.Output.ShouldBe("house.rules\n");
        house.Read("house.rules").ShouldBe(Tidy);
        Directory.GetFiles(house.Path).Length.ShouldBe(1);
        var second = Tool.RunIn(house.Path, "", "format");
        second.Output.ShouldBeEmpty();
        second.Errors.ShouldContain("0 of 1 file changed.");
    }

    [Fact]
    public void Check_lists_what_would_change_and_changes_nothing()
    {
        using var house = new TemporaryHouse(Untidy);
        house.Write("good.rules", Tidy);
        var outcome = Tool.RunIn(house.Path, "", "format", "--check", ".");
        outcome.ExitCode.ShouldBe(1);
        outcome.Output.ShouldBe("house.rules\n");
        house.Read("house.rules").ShouldBe(Untidy);
    }

    [Fact]
    public void Standard_input_goes_to_standard_output()
    {
        var outcome = Tool.RunIn(Path.GetTempPath(), Untidy, "format", "-");
        outcome.ExitCode.ShouldBe(0);
        outcome.Output.ShouldBe(Tidy);
    }

    [Fact]
    public void What_cannot_be_read_is_left_alone_and_said()
    {
        using var house = new TemporaryHouse("say   a means 3 times\n\ncriterion   x\n  raeds y\n");
        var outcome = Tool.RunIn(house.Path, "", "format", "house.rules");
        outcome.ExitCode.ShouldBe(0);
        outcome.Errors.ShouldContain("house.rules: 1 stretch left as written");
        house.Read("house.rules").ShouldBe("say a means 3 times\n\ncriterion   x\n  raeds y\n");
    }

    [Fact]
    public void A_read_only_file_is_refused_and_stays_as_it_is()
    {
        using var house = new TemporaryHouse(Untidy);
        File.SetAttributes(Path.Combine(house.Path, "house.rules"), FileAttributes.ReadOnly);
        var outcome = Tool.RunIn(house.Path, "", "format", "house.rules");
        outcome.ExitCode.ShouldBe(2);
        outcome.Errors.ShouldContain("\"house.rules\" may not be changed: it is marked read-only.");
        house.Read("house.rules").ShouldBe(Untidy);
        File.SetAttributes(Path.Combine(house.Path, "house.rules"), FileAttributes.Normal);
    }

    [Fact]
    public void A_file_that_is_not_utf8_is_refused_before_anything_is_written()
    {
        using var house = new TemporaryHouse(Untidy);
        File.WriteAllBytes(Path.Combine(house.Path, "latin.rules"), [(byte)'n', (byte)'o', (byte)'t', (byte)'e', (byte)' ', 0xE9]);
        var outcome = Tool.RunIn(house.Path, "", "format", ".");
        outcome.ExitCode.ShouldBe(2);
        outcome.Errors.ShouldContain("\"latin.rules\" is not written in UTF-8, so it is left as it is.");
        house.Read("house.rules").ShouldBe(Untidy);
    }

    [Theory]
    [InlineData("There is no folder or file \"rulesets/longreach/hose.rules\"", "rulesets/longreach/hose.rules")]
    [InlineData("\"docs\" holds no file that ends in .rules.", "docs")]
    [InlineData("There is no option \"--chek\"", "rulesets/longreach", "--chek")]
    [InlineData("Name a house")]
    public void Wrong_use_ends_with_code_2_and_a_sentence(string sentence, params string[] arguments)
    {
        var outcome = Tool.Run(["format", .. arguments]);
        outcome.ExitCode.ShouldBe(2, outcome.Output);
        outcome.Errors.ShouldContain(sentence);
    }

    [Fact]
    public void Shipped_houses_need_no_formatting()
    {
        var outcome = Tool.Run("format", "--check", "rulesets/longreach", "rulesets/shared");
        outcome.ExitCode.ShouldBe(0, outcome.Output);
    }
}
