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
    public static MomentArm? About(MusclePart part, JointMotion motion, Posture posture)
    {
        if (motion is not (JointMotion.ShoulderFlexion or JointMotion.ShoulderAbduction or JointMotion.ShoulderHorizontalAdduction))
        {
            return null;
        }

        var (metres, worst) = UpperArmDirection.Of(posture).FromVertical > Hanging ? At(part, motion, posture) : AroundVertical(part, motion, posture);
        return MomentArm.Of(metres, part.Reliability, worst);
    }

    private static (double Metres, Excess Worst) AroundVertical(MusclePart part, JointMotion motion, Posture posture)
    {
        // Only flexion and abduction take a vertical arm away from the vertical; horizontal adduction leaves it there.
        if (motion == JointMotion.ShoulderHorizontalAdduction)
        {
            return (0, part.SlopeAt(JointCoordinates.Of(posture)).Worst);
        }

        var (less, worst) = At(part, motion, posture.With(motion, posture[motion] - Hair));
        var (more, other) = At(part, motion, posture.With(motion, posture[motion] + Hair));
        return ((less + more) / 2, Excess.Worse(worst, other));
    }

    private static (double Metres, Excess Worst) At(MusclePart part, JointMotion motion, Posture posture)
    {
        var arm = UpperArmDirection.Of(posture);
        var rate = UpperArmDirection.RateOf(posture, motion);
        var sine = arm.FromVertical;
        var planeRate = ((rate.X * arm.Z) - (rate.Z * arm.X)) / (sine * sine);
        var elevationRate = rate.Y / sine;
        var (slope, worst) = part.SlopeAt(JointCoordinates.Of(posture));
        return (-((slope.X * planeRate) + (slope.Y * elevationRate)), worst);
    }
}
