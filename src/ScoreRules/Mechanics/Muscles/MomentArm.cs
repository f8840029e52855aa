namespace ScoreRules.Mechanics.Muscles;

/// <summary>Moment arm of a muscle or a part about a motion of a joint.</summary>
/// <param name="Metres">
/// r = -dL/dq, metres: positive when shortening increases the angle. None where only the sign is of use (<see cref="Reliability.SignOnly"/>).
/// </param>
/// <param name="Sign">1, 0 or -1, as r.</param>
/// <param name="Worst">The angle furthest outside of its range; the moment arm is then that at the end of the range.</param>
public readonly record struct MomentArm(double? Metres, int Sign, Excess Worst)
{
    /// <summary>Makes a moment arm, keeping back its size where it cannot be relied on.</summary>
    /// <param name="metres">r, metres.</param>
    /// <param name="reliability">How far it can be relied on.</param>
    /// <param name="worst">The angle furthest outside.</param>
    internal static MomentArm Of(double metres, Reliability reliability, Excess worst) =>
        new(reliability == Reliability.SignOnly ? null : metres, Math.Sign(metres), worst);

    /// <summary>The same about the opposite motion.</summary>
    internal MomentArm Reversed() => new(-Metres, -Sign, Worst);
}
