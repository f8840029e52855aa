namespace ScoreRules.Statistics.Effects;

/// <summary>An effect and its sampling variance.</summary>
/// <param name="Value">The effect: in standard deviations, as a logarithm of a ratio, or in the outcome's unit, as its maker says.</param>
/// <param name="Variance">Square of its standard error, above 0.</param>
public readonly record struct EffectSize(double Value, double Variance)
{
    /// <summary>Square root of the variance.</summary>
    public double StandardError => Math.Sqrt(Variance);
}
