namespace ScoreRules.Mechanics.Statics;

/// <summary>
/// Where the ball of the foot lies on a flat foot, seen from the ankle. The lever of a vertical force is
/// d = Ahead cos a + Below sin a with a the pitch of the foot (toes up positive).
/// </summary>
/// <param name="Ahead">In front of the ankle, m, above 0.</param>
/// <param name="Below">Under the ankle, m, 0 or more.</param>
public sealed record BallOfFoot(double Ahead, double Below)
{
    /// <summary>The form this model pins: 0.13 cos a + 0.05 sin a. Assumed, no source; the ankle stands above the ball of the foot.</summary>
    public static BallOfFoot Default { get; } = new(0.13, 0.05);

    /// <summary>The flat form 0.13 cos a, kept to compare with.</summary>
    public static BallOfFoot Flat { get; } = new(0.13, 0);
}
