using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>Holds when every part holds; fails when one fails.</summary>
public sealed record AllOf(ImmutableArray<Condition> Parts, SourceLocation Location) : Condition(Location);
