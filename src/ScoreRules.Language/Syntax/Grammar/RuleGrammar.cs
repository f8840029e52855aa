using System.Collections.Immutable;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Parsers;
using ScoreRules.Language.Syntax.Tree;
using Superpower;

namespace ScoreRules.Language.Syntax.Grammar;

/// <summary>Statements that act on movements: call, work out, give, take, cancel out, never, leave out, caution, refuse.</summary>
internal static class RuleGrammar
{
    public static readonly ClauseSpec<StepSyntax> StartWith = Step("start with");
    public static readonly ClauseSpec<StepSyntax> Plus = Step("plus");
    public static readonly ClauseSpec<StepSyntax> Minus = Step("minus");
    public static readonly ClauseSpec<StepSyntax> TimesStep = Step("times");
    public static readonly ClauseSpec<StepSyntax> DividedBy = Step("divided by");
    public static readonly ClauseSpec<StepSyntax> NotLess = Step("at least");
    public static readonly ClauseSpec<StepSyntax> NotMore = Step("at most");
    public static readonly ClauseSpec<ConditionLineSyntax> StepWhen = new("when", Conditions.Line) { Continues = true };

    public static readonly ClauseSpec<TextSyntax> InFavour = Texts.Text("in favour");
    public static readonly ClauseSpec<TextSyntax> Against = Texts.Text("against");
    public static readonly ClauseSpec<OperandSyntax> Each = new("each", Conditions.Operand);
    public static readonly ClauseSpec<string> Severity = new("severity", OneWordOf("stop", "high", "medium", "low"));
    public static readonly ClauseSpec<string> Shown = new("shown", OneWordOf("above the ranking", "beside the name", "on the card", "at the foot"));

    /// <summary>The steps of a recipe, in the order of the manual.</summary>
    public static readonly ImmutableArray<ClauseSpec<StepSyntax>> Steps = [StartWith, Plus, Minus, TimesStep, DividedBy, NotLess, NotMore];

    public static readonly HeadSpec Call = new() { FirstLine = new ClauseSpec<NameSyntax>("call", Names.Single), DeclaresName = true, Lines = [.. Reach.Condition, .. Uniform.Lines], NeedsReach = true };

    public static readonly HeadSpec WorkOut = new()
    {
        DeclaresName = true,
        FirstLine = new ClauseSpec<NameSyntax>("work out", Names.Single),
        Lines = [StartWith.Must(), .. Steps[1..].Select(step => step.Repeat()), StepWhen.Repeat(), Reach.And.Repeat(), VocabularyGrammar.InUnit.May(), .. Uniform.Lines],
    };

    public static readonly HeadSpec Give = Rule("give", Conditions.Operand);
    public static readonly HeadSpec Take = Rule("take", Conditions.Operand);
    public static readonly HeadSpec CancelOut = new() { FirstLine = Texts.Words("cancel out"), Lines = [.. Reach.Lines, InFavour.Must(), Against.Must(), Each.May(), .. Uniform.Lines], NeedsReach = true };
    public static readonly HeadSpec NeverAbove = Rule("never above", Names.Single);
    public static readonly HeadSpec NeverBelow = Rule("never below", Names.Single);
    public static readonly HeadSpec LeaveOut = Rule("leave out", Names.List.OptionalOrDefault([]), needsReach: false);
    public static readonly HeadSpec Refuse = Rule("refuse", Primitives.Nothing);

    public static readonly HeadSpec Caution = new()
    {
        FirstLine = Texts.Text("caution"),
        Lines = [.. Reach.Lines, Severity.Must(), Shown.May(), .. Uniform.Lines],
        NeedsReach = true,
    };

    private static HeadSpec Rule<T>(string head, TokenListParser<TokenKind, T> parser, bool needsReach = true) =>
        new() { FirstLine = new ClauseSpec<T>(head, parser), Lines = [.. Reach.Lines, .. Uniform.Lines], NeedsReach = needsReach };

    private static ClauseSpec<StepSyntax> Step(string words) => new(words, Conditions.Operand.Select(operand => new StepSyntax(words, operand)));

    private static TokenListParser<TokenKind, string> OneWordOf(params string[] words) =>
        words.Select(word => Primitives.Phrase(word).Select(_ => word)).Aggregate((left, right) => left.Or(right));
}
