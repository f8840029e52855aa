using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Advice;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;
using Superpower.Model;

namespace ScoreRules.Language.Syntax.Layout;

/// <summary>Reads one line, and the lines it goes on in after a comma, as the clause that its starter promised.</summary>
internal sealed class LineReader(SourceText source, DiagnosticBag findings)
{
    private const int MostTokens = 4000;
    private readonly LineScanner scanner = new(source, findings);
    private readonly LineAdvice advice = new(source);
    private readonly List<Token<TokenKind>> tokens = [];

    /// <summary>The clause, or null when it could not be read (which has then been reported).</summary>
    /// <param name="spec">What kind of line its first words promise.</param>
    /// <param name="line">The line.</param>
    /// <param name="restStart">Offset just behind its first words.</param>
    /// <param name="lines">All lines of the file.</param>
    /// <param name="at">Index of the line; moved on over lines that continue it.</param>
    /// <param name="statement">The statement it stands in.</param>
    /// <param name="guessed">Whether its first words were reported and only guessed at, so that nothing more is said when the rest does not fit.</param>
    public ClauseSyntax? Read(ClauseSpec spec, LineView line, int restStart, LineView[] lines, ref int at, StatementBuilder statement, bool guessed = false)
    {
        tokens.Clear();
        scanner.Scan(SourceSpan.FromBounds(restStart, line.Content.End), spec.Mode, tokens, (statement.Title, statement.Section));
        while (EndsInComma && GoOn(lines, ref at, statement))
        {
        }

        TakeCommaOut(spec, lines, at, statement);
        var readable = tokens.Count <= MostTokens && !tokens.Exists(token => token.Kind == TokenKind.Bad);
        ReportLength(line, tokens.Count, statement);
        var clause = readable ? Parse(spec, line, statement, guessed) : null;
        if (clause is null)
        {
            var named = tokens.Count > 0 && tokens[0].Kind is TokenKind.Word or TokenKind.Quoted or TokenKind.Bad;
            statement.Doubt(spec, named ? source.Slice(SourceSpan.FromBounds(restStart, Math.Max(restStart, lines[at].Content.End))) : "");
        }

        return clause;
    }

    private bool EndsInComma => tokens.Count > 0 && tokens[^1].Kind == TokenKind.Comma;

    private ClauseSyntax? Parse(ClauseSpec spec, LineView line, StatementBuilder statement, bool guessed)
    {
        var end = tokens.Count > 0 ? Parsers.Spans.Of(tokens[^1]).End : line.Content.End;
        var span = SourceSpan.FromBounds(line.Content.Start, Math.Max(end, line.Content.Start));
        var list = new TokenList<TokenKind>([.. tokens]);
        var clause = spec.Parse(list, span);
        if (clause is null && !guessed)
        {
            var failure = FurthestFailure.Of(() => spec.Parse(list, span));
            findings.Add(advice.For(new FailedLine(spec, line, tokens, failure, statement.Title, statement.Section)));
        }

        return clause;
    }

    // A line that ends with a comma goes on in the next line, unless that line starts with a clause word: then the comma is the fault.
    private bool GoOn(LineView[] lines, ref int at, StatementBuilder statement)
    {
        var next = Next(lines, at);
        if (next.Kind != LineKind.Inner || IsClause(next, statement) || StartsAnotherFact(next))
        {
            return false;
        }

        at++;
        scanner.Scan(next.Content, ScanMode.Tokens, tokens, (statement.Title, statement.Section));
        return true;
    }

    // A line that cannot be read without its last comma lacks what should follow it; that is told where the line is parsed.
    private void TakeCommaOut(ClauseSpec spec, LineView[] lines, int at, StatementBuilder statement)
    {
        if (!EndsInComma || (tokens.Count <= MostTokens && !tokens.Exists(token => token.Kind == TokenKind.Bad) && spec.Parse(new TokenList<TokenKind>([.. tokens[..^1]]), default) is null))
        {
            return;
        }

        var next = Next(lines, at);
        ReportComma(tokens[^1], IsClause(next, statement) ? next : null, statement);
        tokens.RemoveAt(tokens.Count - 1);
    }

    private static LineView Next(LineView[] lines, int at) => at + 1 < lines.Length ? lines[at + 1] : default;

    private bool IsClause(LineView next, StatementBuilder statement) =>
        next.Kind == LineKind.Inner && StarterTables.LinesOf(statement.Spec).Match(source.Text, next.Content) is not null;

    // A list of names cannot go on with "stretch is 4"; facts joined by commas can.
    private bool StartsAnotherFact(LineView next) =>
        tokens.FindLast(token => token.Kind is TokenKind.Is or TokenKind.Has).Kind == TokenKind.Has
        && next.HasVerb(source);

    private void ReportComma(Token<TokenKind> comma, LineView? next, StatementBuilder statement)
    {
        var place = source.At(Parsers.Spans.Of(comma));
        var label = next is { } line ? $"joins line {line.Number} to this list" : "nothing follows it";
        findings.Add(new Diagnostic("SR1012", Severity.Error, "A comma at the end of a line makes it go on in the next line", new Label(place, label))
        {
            Within = statement.Title,
            Section = statement.Section,
            Suggestions = [new Suggestion("take the comma out", new TextEdit(place, ""), EditSafety.Safe)],
        });
    }

    private void ReportLength(LineView line, int tokens, StatementBuilder statement)
    {
        if (tokens > MostTokens)
        {
            findings.Add(new Diagnostic("SR1017", Severity.Error, $"This line holds {tokens} words; more than {MostTokens} are not read", new Label(source.At(line.Content with { Length = Math.Min(line.Content.Length, 40) }), "very long line"))
            {
                Within = statement.Title,
                Suggestions = [new Suggestion("split it into several lines or statements")],
            });
        }
    }
}
