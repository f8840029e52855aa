using System.Collections.Immutable;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Parsers;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Syntax.Grammar;

/// <summary>Lines that say which movements a statement is about.</summary>
internal static class Reach
{
    public static readonly ClauseSpec<ConditionLineSyntax> When = new("when", Conditions.Line);
    public static readonly ClauseSpec<ConditionLineSyntax> And = new("and", Conditions.Line) { Continues = true };
    public static readonly ClauseSpec<ConditionLineSyntax> OrWhen = new("or when", Conditions.Line) { Continues = true };
    public static readonly ClauseSpec<ConditionLineSyntax> Unless = new("unless", Conditions.Line);
    public static readonly ClauseSpec<NoContent> Always = Texts.Words("always");

    /// <summary>A condition.</summary>
    public static readonly ImmutableArray<ClauseUse> Condition = [When.May(), And.Repeat(), OrWhen.Repeat(), Unless.Repeat()];

    /// <summary>A condition, or always.</summary>
    public static readonly ImmutableArray<ClauseUse> Lines = [.. Condition, Always.May()];
}
