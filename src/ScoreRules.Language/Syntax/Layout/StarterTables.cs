using System.Runtime.CompilerServices;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Syntax.Layout;

/// <summary>The starters of the statement table, ready for look-up.</summary>
internal static class StarterTables
{
    /// <summary>Heads of statements.</summary>
    public static readonly StarterIndex<HeadSpec> Heads = new(StatementTable.All.Select(head => (head.FirstLine.StarterWords, head)));

    /// <summary>Starters of the lines of all kinds of statement.</summary>
    public static readonly StarterIndex<ClauseUse> AnyLine =
        new(StatementTable.All.SelectMany(head => head.Lines).DistinctBy(use => use.Spec.Starter, StringComparer.Ordinal).Select(use => (use.Spec.StarterWords, use)));

    /// <summary>Starters of the lines that every statement may have.</summary>
    public static readonly StarterIndex<ClauseUse> Uniform = new(Grammar.Uniform.Lines.Select(use => (use.Spec.StarterWords, use)));

    private static readonly ConditionalWeakTable<HeadSpec, StarterIndex<ClauseUse>> Lines = [];

    /// <summary>Starters of the lines of one kind of statement.</summary>
    public static StarterIndex<ClauseUse> LinesOf(HeadSpec head) =>
        Lines.GetValue(head, spec => new StarterIndex<ClauseUse>(spec.Lines.Select(use => (use.Spec.StarterWords, use))));
}
