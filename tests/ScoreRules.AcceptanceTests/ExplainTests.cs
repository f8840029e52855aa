using System.Text.Json;
using Shouldly;
using Xunit;

namespace ScoreRules.AcceptanceTests;

public sealed class ExplainTests
{
    [Fact]
    public void The_card_shows_cautions_then_verdict_then_reasons_then_the_trail_in_the_order_of_effect()
    {
        var output = Tool.Run("explain", "rulesets/longreach", "seated leg curl").Output;
        string[] order = ["First  ", "Verdict", "For   ", "Against", "Trail", "given facts", "called facts", "criteria", "awards", "score", "gap", "tier", "limits", "left out", "cautions", "Rules that had no effect"];
        var places = order.Select(word => output.IndexOf("\n" + word, StringComparison.Ordinal)).ToList();
        places.ShouldAllBe(place => place > 0);
        places.ShouldBe(places.Order());
    }

    [Fact]
    public void Each_step_names_its_rule_and_the_line_of_the_fact_it_read()
    {
        var output = string.Join(' ', Tool.Run("explain", "rulesets/longreach", "seated leg curl").Output.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        output.ShouldContain("tension when lengthened: long tension rated 3 of 4");
        output.ShouldMatch(@"rulesets/longreach/house\.rules:\d+; fact rulesets/shared/movements\.rules:\d+");
        output.ShouldContain("\"It does the work of two movements.\"");
        output.ShouldContain("did not hold: asks \"loadability is at most 1\", found loadability 3 of 4");
    }

    [Fact]
    public void A_movement_that_is_left_out_keeps_its_score_and_says_why()
    {
        var output = string.Join(' ', Tool.Run("explain", "rulesets/longreach", "behind-neck press", "--target", "deltoids").Output.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        output.ShouldContain("deltoids, left out");
        output.ShouldContain("Left out. \"We do not load the neck.\" It keeps its score");
    }

    [Fact]
    public void Json_carries_the_trail_with_every_rule_and_what_became_of_it()
    {
        var outcome = Tool.Run("explain", "rulesets/longreach", "Nordic hamstring curl", "--format", "json");
        using var json = JsonDocument.Parse(outcome.Output);
        var placement = json.RootElement.GetProperty("targets")[0].GetProperty("placements")[0];
        json.RootElement.GetProperty("movement").GetString().ShouldBe("nordic curl");
        var effects = placement.GetProperty("trail").GetProperty("rules").EnumerateArray().Select(rule => rule.GetProperty("effect").GetString()).Distinct().ToList();
        effects.ShouldContain("held");
        effects.ShouldContain("did not hold");
        placement.GetProperty("trail").GetProperty("criteria").GetArrayLength().ShouldBe(10);
    }
}
