using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Tests.Syntax.Words;

/// <summary>A text with one word, number or sign of a line deleted or replaced.</summary>
/// <param name="Told">What was done, for the message of a failing test.</param>
/// <param name="Place">Where the piece stood.</param>
/// <param name="Text">The text after it.</param>
/// <param name="IsFree">Whether the piece is part of a name or of free text, which an author may word at will.</param>
internal sealed record WordMutant(string Told, SourceSpan Place, string Text, bool IsFree)
{
    /// <summary>A word that means nothing here.</summary>
    public const string Nonsense = "plover";

    private static readonly ClauseSpec[] Declaring =
        [VocabularyGrammar.OneOf, VocabularyGrammar.SomeOf, VocabularyGrammar.AlsoKnownAs, VocabularyGrammar.Crosses, EvidenceGrammar.Ignores];

    /// <summary>Whether another kind of line stands there now, which may be as sound as the one before.</summary>
    public bool IsOtherLine { get; init; }

    /// <summary>All such texts: each piece deleted, replaced by a word that means nothing, and replaced by the first word of another line of its statement.</summary>
    public static IEnumerable<WordMutant> Of(SourceText source)
    {
        var statements = SyntaxParser.Parse(source).Statements;
        var names = Names.In(SyntaxParser.Parse(source)).ToList();
        return from statement in statements
               from line in statement.Lines.Append(statement.First!)
               from piece in Pieces(source, line)
               let isFree = piece.Kind == TokenKind.Text || IsDeclared(line, piece) || names.Exists(name => name.Start <= piece.Span.Start && piece.Span.End <= name.End)
               from mutant in Of(source, statement, piece, isFree)
               select mutant;
    }

    private static IEnumerable<WordMutant> Of(SourceText source, StatementSyntax statement, ScannedToken piece, bool isFree)
    {
        var written = source.Slice(piece.Span);
        WordMutant Make(string done, string replacement) => new($"line {source.LineOf(piece.Span.Start)} {done}", piece.Span, $"{source.Text[..piece.Span.Start]}{replacement}{source.Text[piece.Span.End..]}", isFree);
        yield return Make($"without \"{written}\"", "");
        yield return Make($"\"{Nonsense}\" for \"{written}\"", Nonsense);
        foreach (var other in statement.Spec.Lines.Select(use => use.Spec.Starter).FirstOrDefault(starter => starter.Length > 0 && !source.Slice(statement.Span).Contains(starter, StringComparison.Ordinal)) is { } word ? [word] : Array.Empty<string>())
        {
            yield return Make($"\"{other}\" for \"{written}\"", other) with { IsOtherLine = true };
        }
    }

    // A comma between two words that are made up here: without it they are one word, as good as any other.
    private static bool IsDeclared(ClauseSyntax line, ScannedToken piece) => piece.Kind == TokenKind.Comma && Declaring.Contains(line.Spec);

    private static IEnumerable<ScannedToken> Pieces(SourceText source, ClauseSyntax line)
    {
        var tokens = new List<Superpower.Model.Token<TokenKind>>();
        var scanner = new LineScanner(source, new DiagnosticBag());
        var rest = line.Span.Start + line.Spec.Starter.Length;
        scanner.Scan(SourceSpan.FromBounds(line.Span.Start, rest), ScanMode.Tokens, tokens, ("", null));
        scanner.Scan(SourceSpan.FromBounds(rest, line.Span.End), line.Spec.Mode, tokens, ("", null));
        return tokens.Select(token => new ScannedToken(token.Kind, new SourceSpan(token.Span.Position.Absolute, token.Span.Length)));
    }
}
