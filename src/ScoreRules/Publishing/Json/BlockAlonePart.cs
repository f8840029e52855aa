namespace ScoreRules.Publishing.Json;

/// <summary>What one block does to a list.</summary>
/// <param name="Block">The block, in words.</param>
/// <param name="Points">Points that it contributes to the gaps, without sign, on average.</param>
/// <param name="TauBAlone">Kendall's tau-b of the old list and the old list with this block alone of the new house; left out where it cannot be told.</param>
public sealed record BlockAlonePart(string Block, double Points, double? TauBAlone);
