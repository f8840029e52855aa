using CsCheck;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Curves;
using ScoreRules.Mechanics.Statics.Loads;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Statics;

/// <summary>What must hold for any numbers.</summary>
public sealed class StaticPropertyTests
{
    private static readonly BodyDimensions Body = new(Person.Default);

    private static readonly Gen<Rotation> Turns =
        from x in Gen.Double[-180, 180]
        from y in Gen.Double[-180, 180]
        from z in Gen.Double[-180, 180]
        select Rotation.AboutX(x) * Rotation.AboutY(y) * Rotation.AboutZ(z);

    private static readonly Gen<JointAngles> Arms =
        from flexion in Gen.Double[-60, 180]
        from abduction in Gen.Double[0, 120]
        from swing in Gen.Double[-30, 120]
        from turn in Gen.Double[-70, 90]
        from elbow in Gen.Double[0, 150]
        from forearm in Gen.Double[-80, 80]
        select JointAngles.Of(Lifts.Posture(
            (JointMotion.ShoulderFlexion, flexion), (JointMotion.ShoulderAbduction, abduction), (JointMotion.ShoulderHorizontalAdduction, swing),
            (JointMotion.ShoulderExternalRotation, turn), (JointMotion.ElbowFlexion, elbow), (JointMotion.ForearmSupination, forearm)));

    // The body's own weight does not double with the load, so moments of the load alone are compared; shares of the whole curve do change.
    [Fact]
    public void Double_the_load_has_double_the_moment_and_the_same_shape() => Gen.Select(Gen.Double[1, 100], Gen.Double[-40, 80]).Sample((kilograms, upperArm) =>
    {
        var one = Lifts.Curl(new Resistance.Weight(kilograms), upperArm).CurveOf().OfLoadAlone();
        var two = Lifts.Curl(new Resistance.Weight(2 * kilograms), upperArm).CurveOf().OfLoadAlone();
        one.Points.Zip(two.Points).ShouldAllBe(pair => Math.Abs(pair.Second.Moment - (2 * pair.First.Moment)) < 1e-9);
        CurveSummary.ShareOf(two, Third.First)!.Value.ShouldBe(CurveSummary.ShareOf(one, Third.First)!.Value, 1e-12);
    }, iter: 200);

    [Fact]
    public void Turning_the_room_and_gravity_together_changes_nothing() => Gen.Select(Turns, Arms).Sample((turn, angles) =>
    {
        var (here, there) = (ArmPose.Of(Body, angles, Rotation.None), ArmPose.Of(Body, angles, turn));
        foreach (var joint in new[] { JointMotion.ElbowFlexion, JointMotion.ShoulderFlexion, JointMotion.ShoulderAbduction, JointMotion.ShoulderHorizontalAdduction })
        {
            var (pull, turned) = (new Vector3(3, -100, 20), turn.Of(new Vector3(3, -100, 20)));
            var (before, after) = (ScoreRules.Mechanics.Statics.Methods.ArmJoints.At(here, joint, 1), ScoreRules.Mechanics.Statics.Methods.ArmJoints.At(there, joint, 1));
            after.Of(there.Grip, turned).ShouldBe(before.Of(here.Grip, pull), 1e-9);
        }
    }, iter: 300);

    // A mirror turns z round and with it every turn about x or y; a moment about a joint's own axis is what is left.
    [Fact]
    public void The_other_arm_in_a_mirror_has_the_same_moment() => Gen.Select(Arms, Gen.Double[-50, 50]).Sample((angles, side) =>
    {
        static Vector3 Mirror(Vector3 vector) => vector with { Z = -vector.Z };
        static Vector3 MirrorAxis(Vector3 axis) => -Mirror(axis);
        var pose = ArmPose.Of(Body, angles, Rotation.None);
        var about = ScoreRules.Mechanics.Statics.Methods.ArmJoints.At(pose, JointMotion.ShoulderAbduction, 1);
        var mirrored = new ScoreRules.Mechanics.Statics.Methods.Opposition(Mirror(about.Joint), MirrorAxis(about.Axis), 1);
        var pull = new Vector3(10, -80, side);
        mirrored.Of(Mirror(pose.Grip), Mirror(pull)).ShouldBe(about.Of(pose.Grip, pull), 1e-9);
    }, iter: 300);

    [Fact]
    public void A_far_pulley_straight_below_pulls_like_a_free_weight() => Gen.Select(Gen.Double[20, 300], Gen.Double[-40, 90]).Sample((newtons, upperArm) =>
    {
        // Rope directions differ from the vertical by at most hand reach over distance; entry checks refuse such a pulley, so the force itself is asked.
        var far = new Pull.ToPulley(newtons, new Vector3(0, -1e7, 0));
        var weight = new Pull.Constant(newtons * Vector3.Down);
        var pose = ArmPose.Of(Body, JointAngles.Of(Lifts.Posture((JointMotion.ShoulderFlexion, upperArm), (JointMotion.ElbowFlexion, 70))));
        var about = ScoreRules.Mechanics.Statics.Methods.ArmJoints.At(pose, JointMotion.ElbowFlexion, 1);
        about.Of(pose.Grip, far.At(pose.Grip)).ShouldBe(about.Of(pose.Grip, weight.At(pose.Grip)), 1e-4);
    }, iter: 200);

    [Fact]
    public void A_long_soft_band_pulls_like_a_constant_force() => Gen.Select(Gen.Double[20, 200], Gen.Double[-30, 60]).Sample((newtons, upperArm) =>
    {
        var anchor = new Vector3(-0.6, -1.2, 0);
        var softness = 1e-6;
        var band = new Pull.ToAnchor(new BandLaw.Linear(newtons * softness, 1.2 - (1 / softness)), anchor);
        var cable = new Pull.ToPulley(newtons, anchor);
        var grip = ArmPose.Of(Body, JointAngles.Of(Lifts.Posture((JointMotion.ShoulderFlexion, upperArm), (JointMotion.ElbowFlexion, 60)))).Grip;
        (band.At(grip) - cable.At(grip)).Length.ShouldBeLessThan(1e-3);
    }, iter: 200);

    [Fact]
    public void On_an_incline_bench_a_hanging_arm_curls_like_a_standing_one() => Gen.Select(Gen.Double[1, 40], Gen.Double[-60, 0]).Sample((kilograms, recline) =>
    {
        var standing = Lifts.Curl(new Resistance.Weight(kilograms), 0).CurveOf();
        var bench = Lifts.Curl(new Resistance.Weight(kilograms), 0, trunkPitch: recline).CurveOf();
        bench.Points.Zip(standing.Points).ShouldAllBe(pair => Math.Abs(pair.First.Moment - pair.Second.Moment) < 1e-9);
    }, iter: 100);

    [Fact]
    public void The_thirds_of_a_curve_add_up_to_all_of_it() => Gen.Double[-50, 90].Sample(upperArm =>
    {
        var curve = Lifts.Curl(new Resistance.Weight(10), upperArm).CurveOf();
        Enum.GetValues<Third>().Sum(third => CurveSummary.ShareOf(curve, third)!.Value).ShouldBe(1, 1e-9);
    }, iter: 100);

    // Any numbers at all: a curve of numbers, or a reason why not.
    [Fact]
    public void Nothing_but_numbers_or_a_reason_comes_out() => Gen.Select(Odd, Odd, Odd, Odd, Odd).Sample((load, from, to, pulley, mass) =>
    {
        foreach (Resistance resistance in new Resistance[] { new Resistance.Weight(load), new Resistance.Cable(load, new Vector3(pulley, -1, 0)), new Resistance.Band(new BandLaw.Linear(load, pulley), new Vector3(0, pulley, 0)) })
        {
            var profile = StaticSolver.Solve(Lifts.Curl(resistance, 0, from, to) with { Person = new Person(mass, 1.8, Sex.Male) }, 7);
            (profile.Curve is not null || profile.Findings.Length > 0).ShouldBeTrue();
            profile.Curve?.Points.ShouldAllBe(point => double.IsFinite(point.Moment));
        }
    }, iter: 500);

    private static readonly double[] Odds = [0, double.NaN, double.PositiveInfinity, double.NegativeInfinity, 1e300, -1e300, 1e-300];

    private static readonly Gen<double> Odd = Gen.OneOf(Gen.Double[-200, 200], Gen.Int[0, 6].Select(index => Odds[index]));
}
