using System.Text.Json;
using Shouldly;
using Xunit;

namespace ScoreRules.AcceptanceTests;

public sealed class RankTests
{
    [Fact]
    public void The_readme_command_ranks_every_target_with_reasons_and_cautions()
    {
        var outcome = Tool.Run("rank", "rulesets/longreach");

        outcome.ExitCode.ShouldBe(0, outcome.Errors);
        outcome.Errors.ShouldBeEmpty();
        outcome.Output.ShouldStartWith("Longreach, version 3.0.0");
        foreach (var heading in new[] { "Elbow flexors:", "Elbow extensors:", "Chest:", "Back:", "Deltoids:", "Quadriceps:", "Hamstrings:", "Gluteals:", "Calves:" })
        {
            outcome.Output.ShouldContain("\n" + heading);
        }

        outcome.Output.ShouldContain("Education, not medical advice.");
        outcome.Output.ShouldContain("Stop if a movement causes sharp, radiating or joint pain");
        outcome.Output.ShouldNotContain("\u001b");
        outcome.Output.Split('\n').Max(line => line.Length).ShouldBeLessThanOrEqualTo(80);
    }

    [Fact]
    public void Cautions_stand_before_the_first_tier()
    {
        var output = Tool.Run("rank", "rulesets/longreach", "--target", "chest").Output;
        output.IndexOf("Read first", StringComparison.Ordinal).ShouldBeInRange(1, output.IndexOf("points     gap", StringComparison.Ordinal));
    }

    [Fact]
    public void Json_holds_every_movement_with_unrounded_scores_and_a_rule_behind_every_reason()
    {
        var outcome = Tool.Run("rank", "rulesets/longreach", "--format", "json");
        outcome.ExitCode.ShouldBe(0);
        using var json = JsonDocument.Parse(outcome.Output);
        var root = json.RootElement;

        root.GetProperty("schemaVersion").GetInt32().ShouldBe(1);
        root.GetProperty("inputs").EnumerateArray().ShouldAllBe(input => input.GetProperty("sha256").GetString()!.Length == 64);
        root.GetProperty("cautions").GetArrayLength().ShouldBeGreaterThan(0);
        var targets = root.GetProperty("targets").EnumerateArray().ToList();
        targets.Count.ShouldBeGreaterThanOrEqualTo(9);

        var placements = targets.SelectMany(target => target.GetProperty("placements").EnumerateArray()).ToList();
        var leftOut = targets.SelectMany(target => target.GetProperty("leftOut").EnumerateArray()).ToList();
        placements.Concat(leftOut).Select(part => part.GetProperty("movement").GetString()).Distinct().Count().ShouldBe(130);

        placements.ShouldAllBe(placement => placement.GetProperty("principleScore").ValueKind == JsonValueKind.Number);
        var reasons = placements.SelectMany(placement => placement.GetProperty("reasonsFor").EnumerateArray().Concat(placement.GetProperty("reasonsAgainst").EnumerateArray())).ToList();
        reasons.Count.ShouldBeGreaterThan(500);
        reasons.Concat(leftOut).ShouldAllBe(part => part.GetProperty("rule").GetProperty("file").GetString()!.EndsWith(".rules") && part.GetProperty("rule").GetProperty("line").GetInt32() > 0);
    }

    /// <summary>Weights of 2 and 1 are brought to 100: full marks on the lighter one alone give a third of 100 points.</summary>
    [Fact]
    public void Scores_in_json_are_not_rounded()
    {
        using var house = new TemporaryHouse(
            """
            ruleset Small
              version 1

            attribute push
              rated 0 to 4

            attribute pull
              rated 0 to 4

            muscle biceps

            target arms
              made of biceps 1 parts
              benchmark curl

            tiers
              Good is from 2 points above the benchmark
              Other is the rest

            criterion pushing
              counts 2
              reads push
              worth 0% at 0, 100% at 4

            criterion pulling
              counts 1
              reads pull
              worth 0% at 0, 100% at 4

            movement curl
              trains arms
              push is 0, pull is 4

            """);
        using var json = JsonDocument.Parse(Tool.RunIn(house.Path, "", "rank", "--format", "json").Output);
        json.RootElement.GetProperty("targets")[0].GetProperty("placements")[0].GetProperty("score").GetDouble().ShouldBe(100.0 / 3, 1e-12);
    }

    [Fact]
    public void The_same_files_give_the_same_bytes_in_any_culture_and_from_any_folder()
    {
        var first = Tool.Run("rank", "rulesets/longreach", "--format", "json").Output;
        Environment.SetEnvironmentVariable("LC_ALL", "de_DE.UTF-8");
        try
        {
            Tool.Run("rank", "rulesets/longreach", "--format", "json").Output.ShouldBe(first);
        }
        finally
        {
            Environment.SetEnvironmentVariable("LC_ALL", null);
        }
    }

    [Fact]
    public void Without_a_name_the_current_folder_is_the_house()
    {
        var outcome = Tool.RunIn(Path.Combine(Tool.Root, "rulesets", "longreach"), "", "rank", "--target", "calves");
        outcome.ExitCode.ShouldBe(0, outcome.Errors);
        outcome.Output.ShouldContain("Calves: 11 movements");
    }
}
