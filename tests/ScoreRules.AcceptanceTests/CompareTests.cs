using System.Text.Json;
using Shouldly;
using Xunit;

namespace ScoreRules.AcceptanceTests;

public sealed class CompareTests
{
    [Fact]
    public void Two_editions_are_compared_list_by_list_with_the_lines_behind_each_move()
    {
        var outcome = Tool.Run("compare", "rulesets/longreach", "rulesets/longreach-second", "--target", "hamstrings");
        outcome.ExitCode.ShouldBe(0, outcome.Errors);
        outcome.Errors.ShouldBeEmpty();
        var text = string.Join(' ', outcome.Output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        text.ShouldContain("Old: Longreach, version 3.0.0 New: Longreach, second edition, version 4.0.0");
        text.ShouldContain("Education, not medical advice.");
        text.ShouldContain("Cautions: the same, beside the same movements.");
        text.ShouldContain("Kendall's tau-b");
        text.ShouldContain("rank-biased overlap, p = 0.9");
        text.ShouldContain("- dumbbell romanian deadlift: from Build on it (rank 3, +17.2) to Strong pick (rank 5, +4.1)");
        text.ShouldContain("criterion \"tension when lengthened\" (rulesets/longreach-second/house.rules:");
        text.ShouldNotContain("Quadriceps:");
    }

    [Fact]
    public void A_lost_caution_stands_before_everything_else_that_differs()
    {
        var text = Tool.Run("compare", "rulesets/longreach", "rulesets/linden-court").Output;
        text.IndexOf("  lost ", StringComparison.Ordinal).ShouldBeInRange(1, text.IndexOf("What differs", StringComparison.Ordinal));
        text.IndexOf("  lost ", StringComparison.Ordinal).ShouldBeLessThan(text.IndexOf("  added ", StringComparison.Ordinal));
    }

    [Fact]
    public void Json_parts_sum_to_every_move()
    {
        var outcome = Tool.Run("compare", "rulesets/harbour-lane", "rulesets/linden-court", "--format", "json");
        using var json = JsonDocument.Parse(outcome.Output);
        json.RootElement.GetProperty("old").GetProperty("name").GetString().ShouldBe("Harbour Lane");
        var moves = json.RootElement.GetProperty("targets").EnumerateArray().SelectMany(target => target.GetProperty("placements").EnumerateArray())
            .Where(move => move.TryGetProperty("old", out _) && move.TryGetProperty("new", out _)).ToList();
        moves.Count.ShouldBeGreaterThan(20);
        foreach (var move in moves)
        {
            var parts = move.GetProperty("parts").EnumerateArray().ToList();
            parts.ShouldNotBeEmpty();
            parts.Sum(part => part.GetProperty("gap").GetDouble()).ShouldBe(Of(move, "gap"), 1e-9);
            parts.Sum(part => part.GetProperty("rank").GetDouble()).ShouldBe(Of(move, "rank"), 1e-9);
        }

        static double Of(JsonElement move, string what) => move.GetProperty("new").GetProperty(what).GetDouble() - move.GetProperty("old").GetProperty(what).GetDouble();
    }

    [Fact]
    public void A_copy_differs_in_nothing_and_exit_code_tells_a_script_so()
    {
        using var copy = new TemporaryHouse("", "empty.txt");
        foreach (var folder in new[] { "longreach", "shared" })
        {
            Directory.CreateDirectory(Path.Combine(copy.Path, folder));
            foreach (var file in Directory.GetFiles(Path.Combine(Tool.Root, "rulesets", folder), "*.rules"))
            {
                copy.Write(Path.Combine(folder, Path.GetFileName(file)), File.ReadAllText(file));
            }
        }

        var house = Path.Combine(copy.Path, "longreach");
        var same = Tool.Run("compare", "rulesets/longreach", house, "--exit-code");
        same.ExitCode.ShouldBe(0, same.Output);
        same.Output.ShouldContain("Nothing differs: every list and every caution is the same.");

        copy.Write("longreach/house.rules", copy.Read("longreach/house.rules").Replace("  counts 12 parts", "  counts 24 parts", StringComparison.Ordinal));
        Tool.Run("compare", "rulesets/longreach", house).ExitCode.ShouldBe(0);
        Tool.Run("compare", "rulesets/longreach", house, "--exit-code").ExitCode.ShouldBe(1);
    }

    [Theory]
    [InlineData("are one folder", "rulesets/longreach", "rulesets/longreach")]
    [InlineData("are one folder", "rulesets/longreach", "./rulesets/../rulesets/longreach/")]
    [InlineData("are one folder", "rulesets/longreach", "rulesets/longreach/house.rules")]
    [InlineData("There is no folder or file \"rulesets/longrech\"", "rulesets/longreach", "rulesets/longrech")]
    [InlineData("holds no rule text", "rulesets/longreach", "docs")]
    [InlineData("HOUSES is missing.")]
    [InlineData("Too few names: HOUSES needs 2.", "rulesets/longreach")]
    [InlineData("Too many names", "rulesets/longreach", "rulesets/linden-court", "rulesets/shared")]
    [InlineData("There is no target \"hamstring\". Did you mean \"hamstrings\"?", "rulesets/longreach", "rulesets/linden-court", "--target", "hamstring")]
    [InlineData("There is no form \"xml\"", "rulesets/longreach", "rulesets/linden-court", "--format", "xml")]
    public void Wrong_use_ends_with_code_2_and_a_sentence(string sentence, params string[] arguments)
    {
        var outcome = Tool.Run(["compare", .. arguments]);
        outcome.ExitCode.ShouldBe(2, outcome.Output);
        outcome.Errors.ShouldContain(sentence);
        outcome.Output.ShouldBeEmpty();
    }

    [Fact]
    public void A_broken_house_says_what_is_wrong()
    {
        using var house = new TemporaryHouse("criterion x\n  raeds y\n");
        var outcome = Tool.Run("compare", "rulesets/longreach", house.Path);
        outcome.ExitCode.ShouldBe(1);
        outcome.Errors.ShouldContain("SR1004");
        outcome.Output.ShouldBeEmpty();
    }

    [Fact]
    public void A_house_that_ranks_nothing_is_refused_by_name()
    {
        using var house = new TemporaryHouse("note Nothing yet.\n");
        using var other = new TemporaryHouse("note Nothing yet either.\n");
        var outcome = Tool.RunIn(house.Path, "", "compare", ".", other.Path);
        outcome.ExitCode.ShouldBe(2, outcome.Output);
        outcome.Errors.ShouldContain("ranks nothing");
    }
}
