using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>The person whose body the mechanics of a house assume.</summary>
/// <param name="Kilograms">Body mass, kg.</param>
/// <param name="Metres">Standing height, m.</param>
/// <param name="IsFemale">Whose segment constants are used.</param>
/// <param name="Location">Where it stands.</param>
public sealed record PersonDefinition(double Kilograms, double Metres, bool IsFemale, SourceLocation Location);
