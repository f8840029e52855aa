using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>Holds when its part fails; cannot be told when the part cannot.</summary>
public sealed record Unless(Condition Part, SourceLocation Location) : Condition(Location);
