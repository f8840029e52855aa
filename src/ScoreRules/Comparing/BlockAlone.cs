namespace ScoreRules.Comparing;

/// <summary>What one block does to the list of a target when it alone is swapped.</summary>
/// <param name="Block">The block.</param>
/// <param name="TauB">Kendall's tau-b of the old list and the old list with this block of the new house; null where it cannot be told.</param>
/// <param name="Share">Points that the block contributes to the gaps of this target, without sign, on average over the movements of both houses.</param>
public sealed record BlockAlone(RuleBlock Block, double? TauB, double Share);
