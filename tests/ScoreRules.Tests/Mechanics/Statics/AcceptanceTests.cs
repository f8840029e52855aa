using System.Globalization;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Curves;
using ScoreRules.Mechanics.Statics.Loads;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Statics;

/// <summary>Pinned values of the model with their tolerances, on the usual 61 steps where they describe a curve.</summary>
public sealed class AcceptanceTests
{
    public static TheoryData<string> Ids() => [.. ReferenceTable.Rows("mechanics/statics-acceptance.csv").Select(row => row["id"])];

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_pinned_value_holds(string id)
    {
        var row = ReferenceTable.Rows("mechanics/statics-acceptance.csv").Single(row => row["id"] == id);
        var expected = double.Parse(row["expected"], CultureInfo.InvariantCulture);
        Value(id).ShouldNotBeNull(id).ShouldBe(expected, Tolerance(row["tolerance"], expected), row["quantity"]);
    }

    [Fact]
    public void All_22_rows_are_checked() => Ids().Count.ShouldBe(22);

    private static double Tolerance(string text, double expected) => text.Split(' ') switch
    {
        [var percent, "%"] => double.Parse(percent, CultureInfo.InvariantCulture) / 100 * Math.Abs(expected),
        [var value, ..] => double.Parse(value, CultureInfo.InvariantCulture),
        _ => 0,
    };

    // Shapes on 61 steps here; single moments are the same cases as the worked examples of the same name.
    private static double? Value(string id) => id switch
    {
        "W-PR-standing_and_incline_bench-peak" => Peaks.Of(Curl(0)).AngleDegrees,
        "W-PR-standing_and_incline_bench-share" => CurveSummary.ShareOf(Curl(0), Third.First),
        "W-PR-preacher55-peak" => Peaks.Of(Curl(55)).AngleDegrees,
        "W-PR-preacher55-share" => CurveSummary.ShareOf(Curl(55), Third.First),
        "W-PR-preacher55-start" => CurveSummary.StartToPeak(Curl(55)),
        "W-K6-share" => CurveSummary.ShareOf(Lifts.Curl(new Resistance.Cable(100, new Vector3(-1.0, -0.28, 0)), -30).CurveOf().OfLoadAlone(), Third.First),
        "W-LR-share" => CurveSummary.ShareOf(Lifts.LateralRaise(new Resistance.Weight(8)).CurveOf(), Third.First),
        "W-LC-share" => CurveSummary.ShareOf(Lifts.LateralRaise(new Resistance.Cable(60, new Vector3(0, -0.6576, -0.60))).CurveOf().OfLoadAlone(), Third.First),
        _ => WorkedExamples.Of(id[2..]),
    };

    private static MomentCurve Curl(double upperArm) => Lifts.Curl(new Resistance.Weight(10), upperArm).CurveOf();
}
