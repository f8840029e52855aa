namespace ScoreRules.Mechanics.Facts;

/// <summary>How far a fact moves when one input at a time is a little off.</summary>
/// <param name="Low">Lowest value found, in the unit of the fact.</param>
/// <param name="High">Highest value found.</param>
public readonly record struct FactInterval(double Low, double High)
{
    /// <summary>Whether one lies wholly above the other, so that two movements may be ordered.</summary>
    /// <param name="other">The other.</param>
    public bool IsApartFrom(FactInterval other) => Low > other.High || High < other.Low;

    /// <summary>The same, wide enough for one value more.</summary>
    /// <param name="value">The value.</param>
    internal FactInterval With(double value) => new(Math.Min(Low, value), Math.Max(High, value));
}
