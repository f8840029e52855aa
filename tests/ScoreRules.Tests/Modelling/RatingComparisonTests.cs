using System.Globalization;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Modelling;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Modelling;

/// <summary>Ratings beside derived values.</summary>
public sealed class RatingComparisonTests
{
    [Fact]
    public void The_value_points_are_those_of_the_reference()
    {
        var rows = ReferenceTable.Rows("mechanics/value-points.csv");
        RatedFact.All.SelectMany(rated => rated.Worth.Points.Select(point => (rated.Attribute, rated.Fact, point.At, point.Value)))
            .ShouldBe(rows.Select(row => (row["attribute"], row["fact"], Number(row["value"]), Number(row["part of the scale"]))));
    }

    /// <summary>Both facts are 0.55 or 0.75 at half of the scale: two steps of four, so a rating of 4 is two steps higher.</summary>
    [Fact]
    public void The_derived_value_is_told_in_steps_of_the_rating()
    {
        var halves = RatedFact.All.Select(rated => 4 * rated.Worth.Of(rated.Attribute == "stretch" ? 0.75 : 0.55)).ToList();
        halves.ShouldBe([2.0, 2.0]);
    }

    [Theory]
    [InlineData("4", true)]
    [InlineData("1", false)]
    public void A_house_is_asked_about_its_own_movement_when_rating_and_mechanics_are_far_apart(string rating, bool isAsked)
    {
        var findings = Judged.Text(House(rating)).Findings.Where(finding => finding.Code == "SR7301").ToList();
        findings.Count.ShouldBe(isAsked ? 1 : 0);
        findings.ShouldAllBe(finding => finding.Severity == Severity.Information && finding.Location.Text.Contains("long tension", StringComparison.Ordinal));
    }

    [Fact]
    public void The_shared_movements_are_not_a_house_s_to_mend()
    {
        Judged.Longreach.Findings.ShouldNotContain(finding => finding.Code == "SR7301");
        var apart = Judged.Longreach.Catalogue.Movements.SelectMany(movement => movement.Trains.Select(target => Judged.Longreach.Derived!.Of(movement, target, withIntervals: false)))
            .SelectMany(derived => RatingComparison.Of(Judged.Longreach.Ruleset, derived)).Count(comparison => comparison.IsApart);
        apart.ShouldBeGreaterThan(0);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string House(string rating) =>
        $"""
        attribute movement pattern
          one of elbow flexion, squat

        attribute kinetic chain
          one of open, closed

        attribute resistance type
          one of free weight, cable

        attribute line of pull
          one of gravity, to pulley

        attribute load point
          one of one hand, foot

        attribute long tension
          rated 0 to 4

        muscle brachialis

        target forearm benders
          made of brachialis 100 parts
          benchmark strict curl

        movement strict curl
          trains forearm benders
          movement pattern is elbow flexion, kinetic chain is open
          resistance type is free weight, line of pull is gravity, load point is one hand
          long tension is {rating}
          keeps shoulder flexion 0°
          moves elbow flexion 5° to 135°
          external load 10 kg
        """;
}
