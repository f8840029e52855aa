using Shouldly;
using Xunit;

namespace ScoreRules.AcceptanceTests;

public sealed class RankFormatTests
{
    private const string Education = "Education, not medical advice.";

    [Fact]
    public void Markdown_has_cautions_before_results_and_the_edition_at_both_ends()
    {
        var text = Tool.Run("rank", "rulesets/longreach", "--target", "elbow flexors", "--profile", "tender elbow", "--format", "markdown").Output;
        text.ShouldStartWith("# Longreach\n\nLongreach, version 3.0.0, edition ");
        text.IndexOf("**First:** See a licensed clinician", StringComparison.Ordinal).ShouldBeInRange(0, text.IndexOf("| --- |", StringComparison.Ordinal));
        text.ShouldContain("**Stop:** Stop if a movement causes sharp, radiating or joint pain");
        text.ShouldContain("**Set aside,** ");
        text.Split(Education).Length.ShouldBe(3);
    }

    [Fact]
    public void Csv_has_one_row_a_movement_each_with_its_cautions_and_the_edition()
    {
        var lines = Tool.Run("rank", "rulesets/longreach", "--target", "deltoids", "--format", "csv").Output.Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        lines[0].ShouldStartWith("target,rank,tied,movement,first,tier,");
        lines.Length.ShouldBe(1 + 16 + lines.Count(line => line.Contains("Left out.", StringComparison.Ordinal)));
        lines[1..].ShouldAllBe(line => line.Contains(Education, StringComparison.Ordinal) && line.Contains("edition ", StringComparison.Ordinal) && line.Contains("Stop if a movement causes", StringComparison.Ordinal));
        lines.ShouldContain(line => line.Contains("We do not load the neck.", StringComparison.Ordinal));
    }

    [Fact]
    public void Csv_of_a_profile_keeps_what_is_set_aside_with_the_reason()
    {
        var lines = Tool.Run("rank", "rulesets/longreach", "--target", "elbow flexors", "--profile", "tender elbow", "--format", "csv").Output.Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        lines.Length.ShouldBe(19);
        lines.ShouldContain(line => line.Contains("kit missing, ", StringComparison.Ordinal));
    }
}
