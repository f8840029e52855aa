using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>Holds where a called fact holds.</summary>
/// <param name="Fact">Declared name of the called fact.</param>
/// <param name="Location">Where it is asked.</param>
public sealed record CalledTest(string Fact, SourceLocation Location) : Condition(Location);
