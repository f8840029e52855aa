using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary><c>always</c>: holds for every movement.</summary>
public sealed record Everything(SourceLocation Location) : Condition(Location);
