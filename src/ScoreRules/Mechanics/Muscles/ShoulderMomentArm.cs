using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Muscles;

/// <summary>
/// Moment arms of muscles known over plane and elevation, about an anatomical motion q: r = -(dL/dplane dplane/dq + dL/delevation
/// delevation/dq). For an arm that hangs exactly the plane has no rate; the mean of a hair to both sides stands for it.
/// </summary>
internal static class ShoulderMomentArm
{
    private const double Hanging = 1e-6;
    private const double Hair = 0.01;

    /// <summary>Moment arm, or none for a motion that does not turn the upper arm.</summary>
    public static MomentArm? About(MusclePart part, JointMotion motion, in JointAngles angles)
    {
        if (motion is not (JointMotion.ShoulderFlexion or JointMotion.ShoulderAbduction or JointMotion.ShoulderHorizontalAdduction))
        {
            return null;
        }

        var (metres, worst) = UpperArmDirection.Of(angles).FromVertical > Hanging ? At(part, motion, angles) : AroundVertical(part, motion, angles);
        return MomentArm.Of(metres, part.Reliability, worst);
    }

    private static (double Metres, Excess Worst) AroundVertical(MusclePart part, JointMotion motion, in JointAngles angles)
    {
        // Only flexion and abduction take a vertical arm away from the vertical; horizontal adduction leaves it there.
        if (motion == JointMotion.ShoulderHorizontalAdduction)
        {
            return (0, part.SlopeAt(JointCoordinates.Of(angles)).Worst);
        }

        var (less, worst) = At(part, motion, angles.With(motion, angles[motion] - Hair));
        var (more, other) = At(part, motion, angles.With(motion, angles[motion] + Hair));
        return ((less + more) / 2, Excess.Worse(worst, other));
    }

    private static (double Metres, Excess Worst) At(MusclePart part, JointMotion motion, in JointAngles angles)
    {
        var arm = UpperArmDirection.Of(angles);
        var rate = UpperArmDirection.RateOf(angles, motion);
        var sine = arm.FromVertical;
        var planeRate = ((rate.X * arm.Pointing.Z) - (rate.Z * arm.Pointing.X)) / (sine * sine);
        var elevationRate = rate.Y / sine;
        var (slope, worst) = part.SlopeAt(JointCoordinates.Of(angles));
        return (-((slope.X * planeRate) + (slope.Y * elevationRate)), worst);
    }
}
