using ScoreRules.Language.Binding;

namespace ScoreRules.Choosing;

/// <summary>One part of what is wanted.</summary>
/// <param name="Target">The target it is part of.</param>
/// <param name="Kind">What it is about.</param>
/// <param name="Name">The muscle or the pattern.</param>
/// <param name="Share">Its share of all that is wanted, 0 to 1.</param>
public sealed record ChoicePart(TargetDefinition Target, ChoicePartKind Kind, string Name, double Share);
