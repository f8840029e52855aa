using ScoreRules.Language.Binding;

namespace ScoreRules.Catalogue;

/// <summary>A movement in a target where it is ranked: the unit on which rules act.</summary>
/// <param name="Index">Position among the rows: by target, then by movement.</param>
/// <param name="Movement">The movement.</param>
/// <param name="Target">The target.</param>
public sealed record PlacementRow(int Index, Movement Movement, TargetDefinition Target);
