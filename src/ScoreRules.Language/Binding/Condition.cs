using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>A condition over the facts of a movement; three-valued.</summary>
/// <param name="Location">The words that say it.</param>
public abstract record Condition(SourceLocation Location);
