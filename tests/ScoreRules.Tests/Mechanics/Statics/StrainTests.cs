using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Loads;
using ScoreRules.Mechanics.Statics.Strains;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Statics;

/// <summary>Wrist, forearm, spine, sides and supports; expected values are worked out by hand beside each.</summary>
public sealed class StrainTests
{
    // 10 kg x 9.81 x 0.06 m, and a hand of 0.488 kg at 0.0704 m, the forearm level.
    [Fact]
    public void The_wrist_holds_the_weight_and_the_hand() =>
        WristStrain.Peak(Lifts.Curl(new Resistance.Weight(10), 0, 0, 90)).ShouldNotBeNull().ShouldBe(5.886 + (0.0061 * 80 * 9.81 * 0.79 * 0.0495 * 1.8), 1e-9);

    [Fact]
    public void A_cuff_on_the_upper_arm_leaves_the_wrist_alone() =>
        WristStrain.Peak(Lifts.Curl(new Resistance.Weight(10), 0) with { LoadPoint = LoadPoint.UpperArm }).ShouldBeNull();

    // A straight bar lies across: a forearm in the sagittal plane must turn 90, the usual 80 leave 10 to wrist and shoulder.
    [Theory]
    [InlineData(80, 90)]
    [InlineData(-80, -90)]
    public void A_straight_bar_forces_ten_degrees_more_than_a_forearm_turns(double stated, double forced)
    {
        var curl = Lifts.Curl(new Resistance.Weight(10), 0);
        var bar = curl with { Start = curl.Start.With(JointMotion.ForearmSupination, stated), End = curl.End.With(JointMotion.ForearmSupination, stated), FixedHandle = new Vector3(0, 0, 1) };
        var rotation = ForearmStrain.Of(bar).ShouldNotBeNull();
        rotation.RotationDegrees.ShouldBe(forced, 1e-9);
        rotation.BeyondDegrees.ShouldBe(10, 1e-9);
        rotation.WristTiltDegrees.ShouldBe(0, 1e-9);
    }

    // Forward is along the thumb of a hanging forearm in middle position: no turn, no tilt. Raised by 60, the handle leans 60 out of the fist.
    [Fact]
    public void A_handle_that_points_forward_tilts_the_fist()
    {
        var still = Lifts.Curl(new Resistance.Weight(10), 0, 0, 60) with { FixedHandle = new Vector3(1, 0, 0) };
        var rotation = ForearmStrain.Of(still).ShouldNotBeNull();
        rotation.RotationDegrees.ShouldBe(0, 1e-9);
        rotation.WristTiltDegrees.ShouldBe(60, 1e-9);
        ForearmStrain.Of(still with { End = still.Start.With(JointMotion.ElbowFlexion, 1e-6) })!.WristTiltDegrees.ShouldBe(0, 1e-5);
    }

    [Fact]
    public void A_free_handle_forces_nothing() => ForearmStrain.Of(Lifts.Curl(new Resistance.Weight(10), 0)).ShouldBeNull();

    // Trunk level: load 40 kg at 0.82 of 0.5184 m; above the disc 0.678 at 0.626 less 0.142 at 0.09 of the trunk, seen from 0.18.
    [Fact]
    public void The_last_disc_carries_load_and_trunk_in_a_hinge()
    {
        var trunk = 0.288 * 1.8;
        var own = 80 * 9.81 * trunk * ((0.678 * (0.626 - 0.18)) - (0.142 * (0.09 - 0.18)));
        SpineStrain.Peak(Lifts.Hinge(new Resistance.Weight(40), LoadPoint.Shoulders)).ShouldNotBeNull().ShouldBe(own + (40 * 9.81 * 0.82 * trunk), 1e-9);
    }

    // A weight on the thighs or a pad on the hips does not hang on the trunk.
    [Fact]
    public void A_weight_on_the_thighs_does_not_bend_the_trunk() =>
        SpineStrain.Peak(Lifts.Calf(ScoreRules.Mechanics.Statics.BallOfFoot.Default) with { Resistance = new Resistance.Weight(60), LoadPoint = LoadPoint.Thigh }).ShouldBe(0);

    [Fact]
    public void A_pad_under_the_trunk_spares_the_spine() =>
        SpineStrain.Peak(Lifts.Hinge(new Resistance.Weight(40), LoadPoint.Shoulders) with { IsTrunkSupported = true }).ShouldBe(0);

    // A degree of elbow flexion brings 10 kg forward by 0.3228 sin 1; the trunk itself stands over the disc.
    [Fact]
    public void An_upright_trunk_is_bent_by_what_the_hands_hold_in_front() =>
        SpineStrain.Peak(Lifts.Curl(new Resistance.Weight(10), 0, 0, 1) with { SharedBy = 2 }).ShouldNotBeNull().ShouldBe(10 * 9.81 * 0.3228 * Math.Sin(Math.PI / 180), 1e-9);

    [Fact]
    public void Supports_are_counted_once_each() => BodySupport.Of(["feet", "one hand", "feet"], "unilateral").ShouldBe(new BodySupport(2, IsOneSided: true));

    [Fact]
    public void Both_sides_at_once_are_not_one_sided() => BodySupport.Of([], "independent").ShouldBe(new BodySupport(0, IsOneSided: false));
}
