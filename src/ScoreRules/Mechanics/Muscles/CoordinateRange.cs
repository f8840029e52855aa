namespace ScoreRules.Mechanics.Muscles;

/// <summary>The range of an angle for which a muscle part is known, degrees.</summary>
/// <param name="Coordinate">Which angle.</param>
/// <param name="Low">Its smallest value.</param>
/// <param name="High">Its largest value.</param>
public readonly record struct CoordinateRange(JointCoordinate Coordinate, double Low, double High)
{
    /// <summary>The nearest angle inside the range.</summary>
    /// <param name="degrees">The angle wanted.</param>
    /// <param name="excess">How far outside it was.</param>
    internal double Clamp(double degrees, out Excess excess)
    {
        var inside = Math.Clamp(degrees, Low, High);
        excess = new Excess(Coordinate, degrees - inside);
        return inside;
    }
}
