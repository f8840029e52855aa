using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Parsers;
using ScoreRules.Language.Syntax.Tree;
using Superpower;

namespace ScoreRules.Language.Syntax.Grammar;

/// <summary>Statements about the house itself: ruleset, section, philosophy, note.</summary>
internal static class HouseGrammar
{
    public static readonly ClauseSpec<NameSyntax> RulesetHead = new("ruleset", Names.Single);
    public static readonly ClauseSpec<NameSyntax> Version = new("version", Values.Version);
    public static readonly ClauseSpec<TextSyntax> WrittenBy = Texts.Text("written by");
    public static readonly ClauseSpec<CheckedSyntax> Checked = new(
        "checked",
        Values.Date.Then(date => Primitives.Phrase("by").IgnoreThen(Texts.Rest).Select(by => new CheckedSyntax(date, by))),
        ScanMode.TextAfterBy);

    public static readonly ClauseSpec<NameSyntax> Judges = new("judges", Names.Single);
    public static readonly ClauseSpec<TextSyntax> MeantFor = Texts.Text("meant for");
    public static readonly ClauseSpec<NameSyntax[]> UnsuitableFor = new("unsuitable for", Names.List);
    public static readonly ClauseSpec<(QuantitySyntax For, QuantitySyntax Against)> ExplainsWith = new("explains with",
        from reasons in Values.Number
        from reasonsWord in Primitives.Phrase("reasons in favour").Or(Primitives.Phrase("reason in favour"))
        from comma in Primitives.Comma
        from against in Values.Number
        from againstWord in Primitives.Phrase("against")
        select (reasons, against));

    public static readonly ClauseSpec<NoContent> LetsTheReaderGuess = Texts.Words("lets the reader guess first");
    public static readonly ClauseSpec<QuantitySyntax> AllowsItsAuthors = new("allows its authors", Values.Number.Then(n => Primitives.Phrase("personal judgements").Or(Primitives.Phrase("personal judgement")).Select(_ => n)));
    public static readonly ClauseSpec<BaseSyntax> BuildsOn = new("builds on",
        from name in Names.Until("version")
        from comma in Primitives.Comma.OptionalOrDefault()
        from version in Primitives.Phrase("version").IgnoreThen(Values.Version).Maybe()
        select new BaseSyntax(name, version));

    public static readonly ClauseSpec<PersonSyntax> Person = new("person",
        from mass in Values.Quantity
        from comma in Primitives.Comma
        from stature in Values.Quantity
        from secondComma in Primitives.Comma
        from sex in Names.Single
        select new PersonSyntax(mass, stature, sex));

    public static readonly ClauseSpec<NoContent> AcceptsEvenLoad = Texts.Words("accepts an even load");

    public static readonly HeadSpec Ruleset = new()
    {
        FirstLine = RulesetHead,
        Lines =
        [
            Version.Must(), BuildsOn.May(), WrittenBy.May(), Checked.May(), Judges.May(), MeantFor.May(), UnsuitableFor.May(), ExplainsWith.May(),
            LetsTheReaderGuess.May(), AllowsItsAuthors.May(), Person.May(), AcceptsEvenLoad.May(), .. Uniform.Lines,
        ],
    };

    public static readonly HeadSpec Section = new() { FirstLine = Texts.Text("section") };
    public static readonly HeadSpec Philosophy = new() { FirstLine = new ClauseSpec<TextSyntax?>("philosophy", Texts.Rest.Maybe(), ScanMode.Text), IsProse = true };
    public static readonly HeadSpec Note = new() { FirstLine = Texts.Text("note"), IsProse = true };
}
