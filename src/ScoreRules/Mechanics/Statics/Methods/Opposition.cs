using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Statics.Methods;

/// <summary>
/// Takes moments about a joint, positive where they oppose the target: M = -sense ((p - j) x F) . axis, with the axis about
/// which the motion is positive and the forces on the side away from the trunk. For forces on the trunk's side the axis is
/// reversed, because only the turn of one segment against the other counts.
/// </summary>
/// <param name="Joint">Joint centre, m.</param>
/// <param name="Axis">Unit axis of positive motion.</param>
/// <param name="Sense">1 where the target raises the angle, -1 where it lowers it.</param>
internal readonly record struct Opposition(Vector3 Joint, Vector3 Axis, double Sense)
{
    public Opposition FromTrunkSide() => this with { Axis = -Axis };

    public double Of(Vector3 point, Vector3 force) => -Sense * (point - Joint).Cross(force).Dot(Axis);

    public double OfWeight(Vector3 point, double kilograms) => Of(point, kilograms * BodyConstants.Gravity * Vector3.Down);
}
