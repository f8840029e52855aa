using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Curves;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Statics;

/// <summary>Shapes whose numbers can be said without a computer.</summary>
public sealed class CurveSummaryTests
{
    [Fact]
    public void An_even_curve_has_a_third_in_each_third_and_is_flat()
    {
        var curve = Curve(_ => 5);
        Enum.GetValues<Third>().ShouldAllBe(third => Math.Abs(CurveSummary.ShareOf(curve, third)!.Value - (1.0 / 3)) < 1e-12);
        CurveSummary.Flatness(curve)!.Value.ShouldBe(1, 1e-12);
        CurveSummary.StartToPeak(curve).ShouldBe(1);
    }

    // A triangle from 0 to 60: a ninth, three ninths, five ninths.
    [Fact]
    public void A_rising_line_has_one_three_and_five_ninths()
    {
        var curve = Curve(at => at);
        Enum.GetValues<Third>().Select(third => Math.Round(CurveSummary.ShareOf(curve, third)!.Value * 9, 9)).ShouldBe([1, 3, 5]);
        CurveSummary.MeanToPeak(curve, Third.First)!.Value.ShouldBe(1.0 / 6, 1e-12);
        Peaks.Of(curve).ShouldBe(new PeakMoment(60, 60));
    }

    [Fact]
    public void The_top_of_a_parabola_is_found_between_steps()
    {
        var peak = Peaks.Of(Curve(at => 100 - ((at - 20.4) * (at - 20.4))));
        peak.AngleDegrees.ShouldBe(20.4, 1e-9);
        peak.Moment.ShouldBe(100, 1e-9);
    }

    [Fact]
    public void Where_the_load_helps_is_left_out_and_said()
    {
        var curve = Curve(at => at - 30);
        CurveSummary.HelpingSpans(curve).ShouldBe([new AngleSpan(0, 30)]);
        CurveSummary.ShareOf(curve, Third.First)!.Value.ShouldBe(0);
        CurveSummary.ShareOf(curve, Third.Last)!.Value.ShouldBe(1 - (100.0 / 900), 1e-12);
        CurveSummary.StartToPeak(curve)!.Value.ShouldBe(-1);
    }

    [Fact]
    public void Two_stretches_that_help_are_both_said() =>
        CurveSummary.HelpingSpans(Curve(at => at is > 10 and < 50 ? 1 : -1)).ShouldBe([new AngleSpan(0, 10.5), new AngleSpan(49.5, 60)]);

    [Fact]
    public void Without_a_moment_that_opposes_there_is_no_shape()
    {
        var curve = Curve(_ => -1);
        CurveSummary.Flatness(curve).ShouldBeNull();
        CurveSummary.ShareOf(curve, Third.First).ShouldBeNull();
        CurveSummary.StartToPeak(curve).ShouldBeNull();
    }

    [Fact]
    public void A_range_that_falls_keeps_its_order() =>
        Peaks.Of(new MomentCurve(JointMotion.ElbowFlexion, [new(90, 1, 0, 0), new(45, 4, 0, 0), new(0, 1, 0, 0)])).ShouldBe(new PeakMoment(45, 4));

    private static MomentCurve Curve(Func<double, double> moment) =>
        new(JointMotion.ElbowFlexion, [.. Enumerable.Range(0, 61).Select(at => new CurvePoint(at, moment(at), 0, 0))]);
}
