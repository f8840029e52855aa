using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>A target or a movement in <c>only for</c> or <c>except for</c>.</summary>
/// <param name="Target">The target, or null.</param>
/// <param name="Movement">The movement's declared name, or null.</param>
/// <param name="Because">Why it is excepted.</param>
/// <param name="Location">Where it stands.</param>
public sealed record ScopeEntry(TargetDefinition? Target, string? Movement, string? Because, SourceLocation Location);
