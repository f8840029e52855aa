using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Catalogue;

public sealed class PlacementRowsTests
{
    private const string Movements = """
        movement squat
          trains legs
          prime mover has quadriceps
        movement pressdown
          trains arms
          prime mover has triceps long head, triceps short heads
        movement curl
          trains arms
          prime mover has biceps
        movement kickback
          trains triceps
        movement odd dip
          trains arms, triceps, legs
        movement stranger
          trains arms
        movement leg press with long arms
          trains legs
          prime mover has quadriceps, triceps long head
        """;

    [Fact]
    public void Rows_go_by_target_and_then_by_movement_and_know_their_position()
    {
        var rows = Rows(SmallHouse.With(MovementText.Parse(Movements)));
        rows.Select(row => $"{row.Index} {row.Target.Name}: {row.Movement.Name}").ShouldBe(
        [
            "0 arms: curl",
            "1 arms: odd dip",
            "2 arms: pressdown",
            "3 arms: stranger",
            "4 triceps: kickback",
            "5 triceps: odd dip",
            "6 triceps: pressdown",
            "7 legs: leg press with long arms",
            "8 legs: odd dip",
            "9 legs: squat",
        ]);
    }

    [Fact]
    public void A_sub_target_of_a_sub_target_asks_for_prime_movers_of_both()
    {
        var longHead = new TargetDefinition(new StatementInfo("target", "long head", SmallHouse.Target("triceps").Info.Location), [("triceps long head", 1)], "kickback", "Triceps");
        var rows = Rows(SmallHouse.With(MovementText.Parse(Movements)) with { Targets = [.. SmallHouse.Targets, longHead] });
        rows.Where(row => row.Target == longHead).Select(row => row.Movement.Name).ShouldBe(["pressdown"]);
    }

    [Fact]
    public void Targets_that_are_part_of_one_another_in_a_circle_end()
    {
        var arms = SmallHouse.Target("arms") with { Parent = "triceps" };
        var rows = Rows(SmallHouse.With(MovementText.Parse(Movements)) with { Targets = [arms, SmallHouse.Target("triceps")] });
        rows.Count(row => row.Movement.Name == "squat").ShouldBe(0);
    }

    [Fact]
    public void Without_the_attribute_only_trained_targets_count()
    {
        var ruleset = SmallHouse.With(MovementText.Parse("movement pressdown\n  trains arms"));
        Rows(ruleset with { Attributes = [.. ruleset.Attributes.Where(attribute => attribute.Name != WellKnownAttributes.PrimeMover)] })
            .ShouldHaveSingleItem().Target.Name.ShouldBe("arms");
    }

    private static ImmutableArray<PlacementRow> Rows(BoundRuleset ruleset) => PlacementRows.Build(ruleset, CatalogueBuilder.Build(ruleset, new()));
}
