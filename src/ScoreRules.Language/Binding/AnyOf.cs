using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>Holds when one part holds; fails when every part fails.</summary>
public sealed record AnyOf(ImmutableArray<Condition> Parts, SourceLocation Location) : Condition(Location);
