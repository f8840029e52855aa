using System.Collections.Immutable;

namespace ScoreRules.Comparing;

/// <summary>What one block of rules contributes to the move of one placement. Over all blocks each figure sums to the whole move.</summary>
/// <param name="Block">The block.</param>
/// <param name="Gap">Points of the gap to the benchmark.</param>
/// <param name="Rank">Ranks; positive is down the list.</param>
/// <param name="Tier">Tiers; positive is down the list.</param>
/// <param name="Lines">The changed rules of the block that reach this placement or its benchmark.</param>
public sealed record BlockPart(RuleBlock Block, double Gap, double Rank, double Tier, ImmutableArray<RuleChange> Lines);
