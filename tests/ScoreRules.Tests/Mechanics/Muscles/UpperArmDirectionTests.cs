using CsCheck;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Muscles;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Muscles;

/// <summary>From the anatomical angles of the shoulder to plane and elevation: 0 to the side, 90 forward, 135 across the chest, -90 backward.</summary>
public sealed class UpperArmDirectionTests
{
    private static readonly Gen<JointAngles> Angles = Gen.Select(Gen.Double[-60, 180], Gen.Double[-30, 180], Gen.Double[-45, 135])
        .Select((flexion, abduction, adduction) => Of(flexion, abduction, adduction));

    [Theory]
    [InlineData(90, 0, 0, 90, 90)]
    [InlineData(45, 0, 0, 90, 45)]
    [InlineData(0, 90, 0, 0, 90)]
    [InlineData(0, 45, 0, 0, 45)]
    [InlineData(-60, 0, 0, -90, 60)]
    [InlineData(0, 90, 135, 135, 90)]
    [InlineData(0, 60, -30, -30, 60)]
    [InlineData(0, 90, 90, 90, 90)]
    [InlineData(0, 0, 0, 0, 0)]
    [InlineData(0, 0, 90, 0, 0)]
    [InlineData(180, 0, 0, 0, 180)]
    public void A_cardinal_posture_has_the_plane_and_elevation_its_name_says(double flexion, double abduction, double adduction, double plane, double elevation)
    {
        var arm = UpperArmDirection.Of(Of(flexion, abduction, adduction));
        arm.Elevation.ShouldBe(elevation, 1e-9);
        if (elevation is > 0 and < 180)
        {
            arm.Plane.ShouldBe(plane, 1e-9);
        }
    }

    [Fact]
    public void It_points_where_the_arm_of_the_statics_points() => Angles.Sample(angles =>
    {
        var body = new BodyDimensions(Person.Default);
        var elbow = ArmPose.Of(body, angles, Rotation.None).Elbow;
        (elbow - (body.UpperArm.Metres * UpperArmDirection.Of(angles).Pointing)).Length.ShouldBeLessThan(1e-12);
    });

    [Fact]
    public void Its_rate_is_its_numerical_derivative() => Gen.Select(Angles, Gen.Int[(int)JointMotion.ShoulderFlexion, (int)JointMotion.ShoulderHorizontalAdduction].Select(at => (JointMotion)at)).Sample((angles, motion) =>
    {
        const double step = 0.01;
        var (before, after) = (UpperArmDirection.Of(angles.With(motion, angles[motion] - step)), UpperArmDirection.Of(angles.With(motion, angles[motion] + step)));
        var numerical = 180 / (2 * step * Math.PI) * (after.Pointing - before.Pointing);
        (numerical - UpperArmDirection.RateOf(angles, motion)).Length.ShouldBeLessThan(1e-6);
    });

    [Fact]
    public void Plane_and_elevation_stay_in_their_ranges() => Angles.Sample(angles =>
    {
        var arm = UpperArmDirection.Of(angles);
        arm.Plane.ShouldBeInRange(-90, 270);
        arm.Elevation.ShouldBeInRange(0, 180);
    });

    private static JointAngles Of(double flexion, double abduction, double adduction) => JointAngles.Of(ModelPart.Posture(
        (JointMotion.ShoulderFlexion, flexion), (JointMotion.ShoulderAbduction, abduction), (JointMotion.ShoulderHorizontalAdduction, adduction)));
}
