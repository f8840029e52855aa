namespace ScoreRules.Mechanics.Muscles;

/// <summary>How far an angle lies outside of the range for which a muscle is known; the length is then that at the end of the range.</summary>
/// <param name="Coordinate">Which angle.</param>
/// <param name="Degrees">Beyond the upper end (positive) or below the lower end (negative); 0 when inside.</param>
public readonly record struct Excess(JointCoordinate Coordinate, double Degrees)
{
    /// <summary>Whether the angle was outside, so that another had to stand for it.</summary>
    public bool IsClamped => Degrees != 0;

    /// <summary>The one of two that is further outside; the first, when they are alike.</summary>
    public static Excess Worse(Excess one, Excess other) => Math.Abs(other.Degrees) > Math.Abs(one.Degrees) ? other : one;
}
