using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Checks;

namespace ScoreRules.Mechanics.Statics.Strains;

/// <summary>
/// What a handle that cannot turn asks of forearm and wrist. Our own formula, no source: the handle lies across the fist, along
/// its thumb side. With b the handle's direction in the forearm (y along the forearm, x towards the thumb in the middle position,
/// z outward), it forces a rotation s = atan2(b_z, b_x), of the two ends of the handle the one nearer to the stated rotation, and
/// tilts the fist by asin |b_y|.
/// </summary>
public static class ForearmStrain
{
    private const double Usual = 80;

    /// <summary>What is forced at the worse end of the lifting phase: by rotation beyond what is free, then by tilt.</summary>
    /// <param name="mechanism">A movement with a fixed handle.</param>
    /// <returns>Null for a free handle or when a number cannot be.</returns>
    public static ForcedRotation? Of(Mechanism mechanism)
    {
        if (mechanism.FixedHandle is not { Length: > 0, IsFinite: true } handle || NumberChecks.Of(mechanism).Any())
        {
            return null;
        }

        var body = new BodyDimensions(mechanism.Person);
        var (start, end) = (At(body, JointAngles.Of(mechanism.Start), handle.Unit()), At(body, JointAngles.Of(mechanism.End), handle.Unit()));
        return (start.BeyondDegrees, start.WristTiltDegrees).CompareTo((end.BeyondDegrees, end.WristTiltDegrees)) >= 0 ? start : end;
    }

    private static ForcedRotation At(BodyDimensions body, in JointAngles angles, Vector3 handle)
    {
        var middle = ArmPose.Of(body, angles.With(JointMotion.ForearmSupination, 0)).Forearm;
        var stated = angles[JointMotion.ForearmSupination];
        var one = Degrees.Atan2(handle.Dot(middle.Z), handle.Dot(middle.X));
        var other = one > 0 ? one - 180 : one + 180;
        var forced = Math.Abs(one - stated) <= Math.Abs(other - stated) ? one : other;
        var tilt = Degrees.Asin(Math.Clamp(Math.Abs(handle.Dot(middle.Y)), 0, 1));
        return new ForcedRotation(forced, Math.Max(0, Math.Abs(forced) - Usual), tilt);
    }
}
