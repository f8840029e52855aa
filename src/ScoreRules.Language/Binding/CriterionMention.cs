using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>A criterion named somewhere.</summary>
/// <param name="Name">Its declared name.</param>
/// <param name="Location">Where it is named.</param>
public sealed record CriterionMention(string Name, SourceLocation Location);
