namespace ScoreRules.Statistics;

/// <summary>An interval on the scale of the effects it was made from.</summary>
/// <param name="Lower">Its lower end.</param>
/// <param name="Upper">Its upper end, not below the lower one.</param>
public readonly record struct Interval(double Lower, double Upper)
{
    /// <summary>The interval that lies equally far to both sides of its middle.</summary>
    internal static Interval Around(double middle, double half) => new(middle - half, middle + half);
}
