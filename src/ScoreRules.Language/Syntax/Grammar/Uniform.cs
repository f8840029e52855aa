using System.Collections.Immutable;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Parsers;
using ScoreRules.Language.Syntax.Tree;
using Superpower;

namespace ScoreRules.Language.Syntax.Grammar;

/// <summary>Lines that mean the same on every statement.</summary>
internal static class Uniform
{
    public static readonly ClauseSpec<TextSyntax> Because = Texts.Text("because");
    public static readonly ClauseSpec<TextSyntax> Source = Texts.Text("source");
    public static readonly ClauseSpec<TextSyntax> Note = Texts.Text("note");
    public static readonly ClauseSpec<NoContent> Sure = Texts.Words("we are sure");
    public static readonly ClauseSpec<NoContent> Probable = Texts.Words("we think so");
    public static readonly ClauseSpec<NoContent> Shaky = Texts.Words("we may be wrong");
    public static readonly ClauseSpec<NameSyntax[]> OnlyFor = new("only for", Names.List);
    public static readonly ClauseSpec<ExceptionSyntax> ExceptFor = new("except for", Names.List.Then(names => Texts.Because.Maybe().Select(text => new ExceptionSyntax([.. names], text))));
    public static readonly ClauseSpec<DateSyntax> From = new("from", Values.Date);
    public static readonly ClauseSpec<DateSyntax> Until = new("until", Values.Date);
    public static readonly ClauseSpec<NameSyntax> Named = new("named", Names.Single);
    public static readonly ClauseSpec<NameSyntax[]> Overrides = new("overrides", Names.List);
    public static readonly ClauseSpec<AcceptanceSyntax> Accept = new("accept", Names.Single.Then(code => Texts.Because.Select(text => new AcceptanceSyntax(code, text))));

    /// <summary>How firmly a statement is believed: said once.</summary>
    public static readonly Alternatives Belief = new("degree of belief", [Sure, Probable, Shaky]);

    /// <summary>All of them, as any statement may use them.</summary>
    public static readonly ImmutableArray<ClauseUse> Lines =
    [
        Because.Repeat(), Source.Repeat(), Note.Repeat(), Sure.May(), Probable.May(), Shaky.May(), OnlyFor.May(), ExceptFor.Repeat(),
        From.May(), Until.May(), Named.May(), Overrides.May(), Accept.Repeat(),
    ];
}
