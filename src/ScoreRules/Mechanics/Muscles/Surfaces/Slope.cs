namespace ScoreRules.Mechanics.Muscles.Surfaces;

/// <summary>Change of length with the first and with the second angle, metres a radian.</summary>
/// <param name="X">With the first angle.</param>
/// <param name="Y">With the second angle.</param>
internal readonly record struct Slope(double X, double Y)
{
    /// <summary>A share of the way from this slope to another.</summary>
    public Slope Towards(Slope other, double share) => new(double.Lerp(X, other.X, share), double.Lerp(Y, other.Y, share));
}
