using System.Text.Json;
using Shouldly;
using Xunit;

namespace ScoreRules.AcceptanceTests;

public sealed class OverlayTests
{
    [Fact]
    public void A_house_on_another_ranks_with_one_block_that_says_what_it_changed()
    {
        var outcome = Tool.Run("rank", "rulesets/harbour-lane", "--target", "chest");

        outcome.ExitCode.ShouldBe(0, outcome.Errors);
        outcome.Output.ShouldContain("Builds on       Longreach, version 3.0.0.");
        outcome.Output.ShouldContain("Judged for      20 August 2031");
        outcome.Output.ShouldContain("Tell the coach before the class");
    }

    [Fact]
    public void Check_lists_every_change_with_both_places()
    {
        var output = string.Join(' ', Tool.Run("check", "rulesets/harbour-lane").Output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

        output.ShouldContain("criterion \"stability\" of Longreach: Harbour Lane says \"counts twice as much\" (rulesets/harbour-lane/house.rules:");
        output.ShouldContain("where Longreach says \"counts 12 parts\" (rulesets/longreach/house.rules:");
    }

    [Fact]
    public void Json_holds_the_changes_the_base_and_the_day()
    {
        using var json = JsonDocument.Parse(Tool.Run("rank", "rulesets/harbour-lane", "--format", "json", "--date", "2032-06-01").Output);

        json.RootElement.GetProperty("ruleset").GetProperty("judgedFor").GetString().ShouldBe("2032-06-01");
        json.RootElement.GetProperty("ruleset").GetProperty("buildsOn")[0].GetProperty("name").GetString().ShouldBe("Longreach");
        json.RootElement.GetProperty("changes").EnumerateArray().Count(change => change.GetProperty("dropped").GetBoolean()).ShouldBe(23);
        json.RootElement.GetProperty("notInForce").EnumerateArray().Single().GetProperty("title").GetString()!.ShouldContain("press comes later");
    }

    [Fact]
    public void A_house_whose_base_is_missing_gets_one_message()
    {
        using var house = new TemporaryHouse("ruleset Alone\n  version 1\n  builds on Nobody\n\nchange criterion stretch\n  counts 3 parts\n\ngive 2 points\n  when stretch is 3\n");
        var outcome = Tool.Run("check", house.Path);

        outcome.ExitCode.ShouldBe(1);
        outcome.Output.ShouldContain("error SR2101: There is no house \"Nobody\" to build on");
        outcome.Output.ShouldContain("1 error.");
    }

    [Fact]
    public void A_day_that_is_none_is_refused()
    {
        var outcome = Tool.Run("rank", "rulesets/harbour-lane", "--date", "tomorrow");

        outcome.ExitCode.ShouldBe(2);
        outcome.Errors.ShouldContain("\"tomorrow\" is not a day. Write year, month and day, such as 2031-08-20.");
    }
}
