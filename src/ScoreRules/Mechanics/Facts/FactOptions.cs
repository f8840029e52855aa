using ScoreRules.Mechanics.Statics.Strains;

namespace ScoreRules.Mechanics.Facts;

/// <summary>How facts are to be worked out.</summary>
public sealed record FactOptions
{
    /// <summary>With intervals, no even load, nothing known about supports.</summary>
    public static FactOptions Default { get; } = new();

    /// <summary>Whether to find out how far each fact moves; takes some twenty times as long.</summary>
    public bool WithIntervals { get; init; } = true;

    /// <summary>Whether an even load may stand for a machine whose cam is not recorded; facts made so say that they are assumed.</summary>
    public bool AcceptsEvenLoad { get; init; }

    /// <summary>How the body is held; null when the movement does not say.</summary>
    public BodySupport? Support { get; init; }
}
