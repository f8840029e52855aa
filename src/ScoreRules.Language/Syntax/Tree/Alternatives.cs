using System.Collections.Immutable;

namespace ScoreRules.Language.Syntax.Tree;

/// <summary>Kinds of line of which only one may stand in a statement.</summary>
/// <param name="What">What they tell, such as "kind of value".</param>
/// <param name="Lines">The kinds.</param>
internal sealed record Alternatives(string What, ImmutableArray<ClauseSpec> Lines);
