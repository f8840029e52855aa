using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Parsers;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Syntax.Grammar;

/// <summary>Statements about movements: movement and place.</summary>
internal static class MovementGrammar
{
    public static readonly ClauseSpec<NameSyntax> Like = new("like", Names.Single);
    public static readonly ClauseSpec<NameSyntax[]> Trains = new("trains", Names.List);
    public static readonly ClauseSpec<FactSyntax[]> Facts = new("", FactParsers.Line);
    public static readonly ClauseSpec<FactSyntax[]> ButFacts = new("but", FactParsers.Line);
    public static readonly ClauseSpec<FactSyntax[]> GuessedFacts = new("at a guess", FactParsers.Line);
    public static readonly ClauseSpec<FactSyntax[]> ButGuessedFacts = new("but at a guess", FactParsers.Line);
    public static readonly ClauseSpec<AngleSyntax[]> Keeps = new("keeps", FactParsers.Angles);
    public static readonly ClauseSpec<AngleSyntax[]> ButKeeps = new("but keeps", FactParsers.Angles);
    public static readonly ClauseSpec<AngleSyntax[]> Moves = new("moves", FactParsers.Turns);
    public static readonly ClauseSpec<AngleSyntax[]> ButMoves = new("but moves", FactParsers.Turns);
    public static readonly ClauseSpec<DirectionSyntax[]> Pulley = new("pulley", FactParsers.Directions);
    public static readonly ClauseSpec<DirectionSyntax[]> ButPulley = new("but pulley", FactParsers.Directions);
    public static readonly ClauseSpec<DirectionSyntax[]> FootLine = new("foot line", FactParsers.Directions);
    public static readonly ClauseSpec<DirectionSyntax[]> ButFootLine = new("but foot line", FactParsers.Directions);
    public static readonly ClauseSpec<ValueSyntax> ExternalLoad = new("external load", Values.Value);
    public static readonly ClauseSpec<ValueSyntax> ButExternalLoad = new("but external load", Values.Value);
    public static readonly ClauseSpec<PairSyntax[]> Band = new("band", FactParsers.Pairs);
    public static readonly ClauseSpec<PairSyntax[]> ButBand = new("but band", FactParsers.Pairs);
    public static readonly ClauseSpec<PairSyntax[]> CamRadius = new("cam radius", FactParsers.Pairs);
    public static readonly ClauseSpec<PairSyntax[]> ButCamRadius = new("but cam radius", FactParsers.Pairs);

    public static readonly ClauseSpec<NameSyntax> JustBelow = new("just below", Names.Single);
    public static readonly ClauseSpec<NameSyntax> JustAbove = new("just above", Names.Single);
    public static readonly ClauseSpec<NameSyntax> Beside = new("beside", Names.Single);
    public static readonly ClauseSpec<NoContent> OneTierHigher = Texts.Words("one tier higher");
    public static readonly ClauseSpec<NoContent> OneTierLower = Texts.Words("one tier lower");

    public static readonly HeadSpec Movement = new()
    {
        DeclaresName = true,
        FirstLine = new ClauseSpec<NameSyntax>("movement", Names.Single),
        NamedLine = Facts,
        Lines =
        [
            VocabularyGrammar.AlsoKnownAs.Repeat(), Like.May(), Trains.May(), Facts.Repeat(), ButFacts.Repeat(), GuessedFacts.Repeat(),
            ButGuessedFacts.Repeat(), Keeps.Repeat(), ButKeeps.Repeat(), Moves.Repeat(), ButMoves.Repeat(), Pulley.May(), ButPulley.May(),
            FootLine.May(), ButFootLine.May(), ExternalLoad.May(), ButExternalLoad.May(), Band.May(), ButBand.May(), CamRadius.May(), ButCamRadius.May(),
            HouseGrammar.AcceptsEvenLoad.May(), .. Uniform.Lines,
        ],
    };

    public static readonly HeadSpec Place = new()
    {
        FirstLine = new ClauseSpec<NameSyntax>("place", Names.Single),
        Lines = [JustBelow.May(), JustAbove.May(), Beside.May(), OneTierHigher.May(), OneTierLower.May(), .. Uniform.Lines],
        OneOf = [JustBelow, JustAbove, Beside, OneTierHigher, OneTierLower],
    };
}
