using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Tests.Documentation;

/// <summary>What the words of an example are: names that its author makes up, first words of lines, or words that must be right.</summary>
internal sealed class WordRoles(string text)
{
    // Lines whose words are the author's own, so that another word is another sound thought.
    private static readonly ClauseSpec[] OwnWords =
    [
        VocabularyGrammar.OneOf, VocabularyGrammar.SomeOf, VocabularyGrammar.SomeOfTheMuscles, VocabularyGrammar.Crosses, VocabularyGrammar.AlsoKnownAs, VocabularyGrammar.Tier, OverlayGrammar.Tier,
        VocabularyGrammar.SayHead, HouseGrammar.Judges, HouseGrammar.WrittenBy, Uniform.Named, Uniform.Accept, EvidenceGrammar.Outcome, EvidenceGrammar.Ignores,
    ];

    // Read and not yet applied: their units, joints and directions are not checked before they have an effect.
    private static readonly ClauseSpec[] NotYetChecked =
    [
        HouseGrammar.Person, MovementGrammar.Keeps, MovementGrammar.ButKeeps, MovementGrammar.Moves, MovementGrammar.ButMoves, MovementGrammar.Pulley, MovementGrammar.ButPulley,
        MovementGrammar.FootLine, MovementGrammar.ExternalLoad, MovementGrammar.Band, MovementGrammar.CamRadius, MovementGrammar.ButFootLine,
        MovementGrammar.ButExternalLoad, MovementGrammar.ButBand, MovementGrammar.ButCamRadius, MovementGrammar.ButFacts, MovementGrammar.ButGuessedFacts,
    ];

    private readonly SourceText source = new("example.rules", text);
    private readonly IReadOnlyList<StatementSyntax> statements = SyntaxParser.Parse(new SourceText("example.rules", text)).Statements;

    /// <summary>Whether a word may be another one without a message.</summary>
    public bool IsFree(WordMutant mutant)
    {
        var (statement, line) = At(mutant.At);
        var isFirst = line.Span.Start == mutant.At || source.Text[(mutant.At - 1)..mutant.At] != " " || source.Slice(SourceSpan.FromBounds(source.LineSpan(source.LineOf(mutant.At)).Start, mutant.At)).Trim().Length == 0;
        return Declares(statement, line) || OwnWords.Contains(line.Spec) || NotYetChecked.Contains(line.Spec)
            || (isFirst && mutant.Told.Contains("\" made \"", StringComparison.Ordinal))
            || (statement.Spec == QuestionGrammar.Expect && mutant.Told == "\"%\" lost") // 60 movements at most are a sound thought too
            || (statement.Spec.Words == "change say" && mutant.Told == "\"points\" lost"); // its kind is checked where the word is used
    }

    /// <summary>Whether a message stands by a word: on its line, on the first line of its statement, right below it; or, where a name is declared, where it is used.</summary>
    public bool IsNear(WordMutant mutant, SourceText mutated, int line)
    {
        var (statement, own) = At(mutant.At);
        var (at, head) = (mutated.LineOf(mutant.At), mutated.LineOf(Math.Min(statement.Span.Start, mutated.Text.Length)));
        return line == at || line == head || line == at + 1 || Declares(statement, own) || OwnWords.Contains(own.Spec) || own.Spec == ScoringGrammar.Reads;
    }

    private static bool Declares(StatementSyntax statement, ClauseSyntax line) => line == statement.First && (statement.Spec.DeclaresName || statement.Spec == HouseGrammar.Ruleset);

    private (StatementSyntax Statement, ClauseSyntax Line) At(int offset)
    {
        var statement = statements.Last(statement => statement.Span.Start <= offset);
        return (statement, statement.Lines.Append(statement.First!).Where(line => line.Span.Start <= offset).MaxBy(line => line.Span.Start)!);
    }
}
