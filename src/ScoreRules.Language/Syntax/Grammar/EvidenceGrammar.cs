using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Parsers;
using ScoreRules.Language.Syntax.Tree;
using Superpower;

namespace ScoreRules.Language.Syntax.Grammar;

/// <summary>Statements about studies: evidence and study.</summary>
internal static class EvidenceGrammar
{
    public static readonly ClauseSpec<QuantitySyntax> PrinciplesMayBeOff = new("principles may be off by", Values.Points);
    public static readonly ClauseSpec<ValueSyntax> OneStandardDeviationIsWorth = new("one standard deviation is worth", Values.Value);
    public static readonly ClauseSpec<QuantitySyntax> LoneStudyAdds = new("a lone study adds", Values.Points.Then(points => Primitives.Phrase("of doubt").Select(_ => points)));
    public static readonly ClauseSpec<NameSyntax[]> Ignores = new("ignores", Names.List);
    public static readonly ClauseSpec<QuantitySyntax> Spreads = new("spreads to movements at least", Values.Percent.Then(share => Primitives.Phrase("alike").Select(_ => share)));
    public static readonly ClauseSpec<NoContent> Freezes = Texts.Words("freezes benchmarks");

    public static readonly ClauseSpec<ComparesSyntax> Compares = new("compares",
        Primitives.Phrase("movements").Select(_ => new ComparesSyntax("movements", null))
            .Or(Primitives.Phrase("classes of").IgnoreThen(Names.Single).Select(name => new ComparesSyntax("classes of", name)))
            .Or(Primitives.Phrase("amounts of").IgnoreThen(Names.Single).Select(name => new ComparesSyntax("amounts of", name))));

    public static readonly ClauseSpec<FindingSyntax> Found = new("found", StudyParsers.Found);
    public static readonly ClauseSpec<FindingSyntax> Measured = new("measured", StudyParsers.Measured);
    public static readonly ClauseSpec<NameSyntax> Outcome = new("outcome", Names.Single);
    public static readonly ClauseSpec<(QuantitySyntax Count, TextSyntax Who)> People =
        new("people", Values.Number.Then(count => Texts.Rest.Select(who => (count, who))), ScanMode.TextAfterNumber);

    public static readonly ClauseSpec<QuantitySyntax> Lasted = new("lasted", Values.Number.Then(n => Primitives.Phrase("weeks").Or(Primitives.Phrase("week")).Select(_ => n)));
    public static readonly ClauseSpec<string> Design = new("design", StudyParsers.Design);
    public static readonly ClauseSpec<NoContent> ShowIt = Texts.Words("show it");
    public static readonly ClauseSpec<NoContent> WeighIt = Texts.Words("weigh it");
    public static readonly ClauseSpec<NoContent> LetItDecide = Texts.Words("let it decide");
    public static readonly ClauseSpec<(QuantitySyntax Share, TextSyntax? Because)> Trust =
        new("trust", Values.Percent.Then(share => Texts.Because.Maybe().Select(because => (share, because))));

    public static readonly ClauseSpec<(DateSyntax Date, TextSyntax? Because)> Withdrawn =
        new("withdrawn", Values.Date.Then(date => Texts.Because.Maybe().Select(because => (date, because))));

    public static readonly HeadSpec Evidence = new()
    {
        FirstLine = Texts.Words("evidence"),
        Lines = [PrinciplesMayBeOff.May(), OneStandardDeviationIsWorth.May(), LoneStudyAdds.May(), Ignores.May(), Spreads.May(), Freezes.May(), .. Uniform.Lines],
    };

    public static readonly HeadSpec Study = new()
    {
        FirstLine = new ClauseSpec<NameSyntax>("study", Names.Single),
        Lines =
        [
            Compares.Must(), Found.Repeat(), Measured.Repeat(), Outcome.Must(), People.May(), Lasted.May(), Design.May(), ShowIt.May(), WeighIt.May(),
            LetItDecide.May(), Trust.May(), Withdrawn.May(), .. Uniform.Lines,
        ],
        OneOf = [Found, Measured],
    };
}
