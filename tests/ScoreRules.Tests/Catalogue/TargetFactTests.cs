using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Catalogue;

/// <summary>A fact may be said for one target: it stands before what is said of the movement as a whole, and sub-targets take it over.</summary>
public sealed class TargetFactTests
{
    private const string House = """
        attribute reach
          rated 0 to 4

        attribute prime mover
          some of the muscles

        muscle biceps

        muscle triceps

        target front
          made of biceps 100 parts
          benchmark plain

        target back
          made of triceps 100 parts
          benchmark plain

        target back of the back
          part of back
          made of triceps 100 parts
          benchmark plain

        tiers
          Keep is within 5 points of the benchmark
          Swap is the rest

        criterion long
          counts 10 parts
          reads reach
          worth 0% at 0, 100% at 4

        movement plain
          trains front, back
          prime mover has triceps
          reach is 2

        movement mixed
          trains front, back
          prime mover has triceps
          reach is 1
          reach is 4 for back

        movement cousin
          like mixed
          but reach is 3 for back

        """;

    [Theory]
    [InlineData("front", "mixed", 25)]
    [InlineData("back", "mixed", 100)]
    [InlineData("back of the back", "mixed", 100)]
    [InlineData("front", "cousin", 25)]
    [InlineData("back", "cousin", 75)]
    public void The_score_reads_the_fact_of_its_target(string target, string movement, double score) =>
        Judged.Text(House).Target(target).Placements.Single(placement => placement.Row.Movement.Name == movement).Score.ShouldBe(score, 1e-9);

    [Fact]
    public void Nothing_is_left_to_mend() => Judged.Text(House).Findings.ShouldBeEmpty();

    [Fact]
    public void Saying_it_twice_for_one_target_is_an_error() =>
        Judged.Text(House.Replace("reach is 4 for back", "reach is 4 for back\n  reach is 3 for back", StringComparison.Ordinal)).Findings.Select(finding => finding.Code).ShouldBe(["SR7008"]);
}
