using System.Collections.Immutable;
using ScoreRules.Answers.Order;

namespace ScoreRules.Answers.Firmness;

/// <summary>How firmly one movement stands above another in one target.</summary>
/// <param name="Order">How they stand, and why.</param>
/// <param name="Swaps">The weights that would put them level, smallest change first; empty when none would.</param>
/// <param name="Verdict">Whether weights can put them level at all.</param>
public sealed record FirmnessFinding(OrderFinding Order, ImmutableArray<SwapFinding> Swaps, FirmnessVerdict Verdict)
{
    /// <summary>How often the one stands above the other when weights, ratings and beliefs vary inside what the author admits, 0 to 1; null where that was not drawn.</summary>
    public double? Probability { get; init; }
}
