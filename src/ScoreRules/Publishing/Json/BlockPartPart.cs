using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>What one block contributes to the move of one placement.</summary>
/// <param name="Block">The block, in words.</param>
/// <param name="Gap">Points of the gap.</param>
/// <param name="Rank">Ranks; positive is down the list. Left out stands behind all that are ranked.</param>
/// <param name="Tier">Tiers; positive is down the list. Left out stands below the last tier.</param>
/// <param name="Lines">The changed rules of the block that reach this placement or its benchmark.</param>
public sealed record BlockPartPart(string Block, double Gap, double Rank, double Tier, ImmutableArray<ChangePart> Lines);
