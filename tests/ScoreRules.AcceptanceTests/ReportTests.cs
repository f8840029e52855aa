using Shouldly;
using Xunit;

namespace ScoreRules.AcceptanceTests;

public sealed class ReportTests
{
    [Fact]
    public void The_page_is_written_whole_and_its_place_is_said()
    {
        using var place = new TemporaryHouse("", "old.html");
        var file = Path.Combine(place.Path, "old.html");
        var outcome = Tool.Run("report", "rulesets/linden-court", "--out", file);
        outcome.ExitCode.ShouldBe(0, outcome.Errors);
        outcome.Output.ShouldBe(file + "\n");
        place.Read("old.html").ShouldStartWith("<!DOCTYPE html>");
        Directory.GetFiles(place.Path).ShouldBe([file]);
    }

    [Fact]
    public void The_same_house_from_another_folder_gives_the_same_bytes()
    {
        using var place = new TemporaryHouse("", "a.html");
        Tool.Run("report", "rulesets/linden-court", "--out", Path.Combine(place.Path, "a.html")).ExitCode.ShouldBe(0);
        Tool.RunIn(Path.Combine(Tool.Root, "rulesets", "linden-court"), "", "report", "--out", Path.Combine(place.Path, "b.html")).ExitCode.ShouldBe(0);
        place.Read("a.html").ShouldBe(place.Read("b.html"));
    }

    [Fact]
    public void Errors_in_the_rules_stop_it_and_leave_what_is_there()
    {
        using var house = new TemporaryHouse("criterion\n");
        house.Write("old.html", "mine");
        var outcome = Tool.RunIn(house.Path, "", "report", ".", "--out", "old.html");
        outcome.ExitCode.ShouldBe(1);
        outcome.Errors.ShouldContain("Nothing is ranked until the errors are mended.");
        house.Read("old.html").ShouldBe("mine");
    }

    [Theory]
    [InlineData("Where to? Type: scorerules report rulesets/longreach --out FILE", "rulesets/longreach")]
    [InlineData("cannot be written", "rulesets/longreach", "--out", "no-such-folder/page.html")]
    [InlineData("The page and the print are two files.", "rulesets/longreach", "--out", "page.html", "--pdf", "page.html")]
    [InlineData("is a folder. Name a file in it.", "rulesets/longreach", "--out", "rulesets")]
    [InlineData("There is no profile \"nobody\"", "rulesets/longreach", "--out", "page.html", "--profile", "nobody")]
    public void Wrong_use_ends_with_code_2_and_a_sentence(string sentence, params string[] arguments)
    {
        var outcome = Tool.Run(["report", .. arguments]);
        outcome.ExitCode.ShouldBe(2, outcome.Output);
        outcome.Errors.ShouldContain(sentence);
        File.Exists(Path.Combine(Tool.Root, "page.html")).ShouldBeFalse();
    }
}
