using Shouldly;
using Xunit;

namespace ScoreRules.AcceptanceTests;

public sealed class DespiteErrorsTests
{
    [Fact]
    public void A_broken_house_is_ranked_only_when_asked_and_says_what_is_missing()
    {
        using var house = new TemporaryHouse(File.ReadAllText(Path.Combine(Tool.Root, "rulesets", "linden-court", "house.rules")).Replace("counts 30 parts", "counts thirty parts", StringComparison.Ordinal));
        house.Write("studies.rules", "");

        var refused = Tool.Run("rank", house.Path, "--target", "calves");
        refused.ExitCode.ShouldBe(1);
        refused.Output.ShouldBeEmpty();

        var ranked = Tool.Run("rank", house.Path, "--target", "calves", "--despite-errors");
        ranked.ExitCode.ShouldBe(1);
        ranked.Output.ShouldContain("Not complete    this ranking was made despite 1 error.");
        ranked.Output.ShouldContain("Calves: 11 movements");
    }
}
