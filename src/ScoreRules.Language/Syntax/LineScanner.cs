using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;
using Superpower.Model;

namespace ScoreRules.Language.Syntax;

/// <summary>Turns (part of) one line into tokens. Never fails: what cannot be read is reported and becomes a bad token.</summary>
internal sealed class LineScanner(SourceText source, DiagnosticBag findings)
{
    private readonly SignReport report = new(source, findings);
    private List<Token<TokenKind>> tokens = [];
    private int at;
    private int end;
    private SignFindings? signs;
    private NumberFindings? numbers;

    private SignFindings Signs => signs ??= new SignFindings(source, report);

    private NumberFindings Numbers => numbers ??= new NumberFindings(source, report);

    /// <summary>Adds the tokens of a stretch of one line to <paramref name="into"/>.</summary>
    /// <param name="line">The stretch.</param>
    /// <param name="mode">Where free text begins in it.</param>
    /// <param name="into">Where the tokens go.</param>
    /// <param name="within">What messages call the statement, and the section above it.</param>
    public void Scan(SourceSpan line, ScanMode mode, List<Token<TokenKind>> into, (string Title, string? Section) within)
    {
        (report.Within, report.Section) = within;
        tokens = into;
        at = line.Start;
        end = line.End;
        if (mode == ScanMode.Text)
        {
            AddText();
        }

        while (SkipBlanks())
        {
            var before = tokens.Count;
            ScanOne();
            if (tokens.Count > before && TextFollows(mode, tokens[^1]))
            {
                AddText();
            }
        }
    }

    private static bool TextFollows(ScanMode mode, Token<TokenKind> last) => last.Kind switch
    {
        TokenKind.Because => true,
        TokenKind.Number => mode == ScanMode.TextAfterNumber,
        TokenKind.Word => mode == ScanMode.TextAfterBy && last.Span.EqualsValueIgnoreCase("by"),
        _ => false,
    };

    private bool SkipBlanks()
    {
        while (at < end && source.Text[at] is ' ' or '\t')
        {
            at++;
        }

        return at < end;
    }

    private void AddText()
    {
        if (!SkipBlanks())
        {
            return;
        }

        var (start, stop) = (at, end);
        while (char.IsWhiteSpace(source.Text[stop - 1]))
        {
            stop--;
        }

        if (stop - start >= 2 && source.Text[start] == '"' && source.Text[stop - 1] == '"')
        {
            (start, stop) = (start + 1, stop - 1);
        }

        Add(TokenKind.Text, start, stop - start);
        at = end;
    }

    private void ScanOne()
    {
        var c = source.Text[at];
        if (char.IsLetter(c) && c != 'º')
        {
            ScanWord(at);
        }
        else if (char.IsAsciiDigit(c) || (c is '-' or '−' && at + 1 < end && char.IsAsciiDigit(source.Text[at + 1])))
        {
            ScanNumber();
        }
        else if (c == '"')
        {
            ScanQuoted();
        }
        else
        {
            ScanSign(c);
        }
    }

    private void ScanSign(char c)
    {
        TokenKind? known = c switch { ',' => TokenKind.Comma, '%' => TokenKind.Percent, '°' => TokenKind.Degree, _ => null };
        var (length, kind) = known is null ? Signs.Report(at, end) : (1, known);
        if (kind is { } sound)
        {
            Add(sound, at, length);
        }

        at += length;
    }

    private void ScanWord(int start)
    {
        var stop = WordEnd(start);
        var word = source.Text.AsSpan(start, stop - start);
        var bad = Signs.ReportLookAlikes(start, stop);
        Add(bad ? TokenKind.Bad : ReservedWords.KindOf(word), start, stop - start);
        at = stop;
    }

    private int WordEnd(int start)
    {
        var i = start;
        while (i < end && IsWordPart(i))
        {
            i++;
        }

        return i;
    }

    private bool IsWordPart(int i)
    {
        var c = source.Text[i];
        return char.IsLetterOrDigit(c) || char.GetUnicodeCategory(c) == System.Globalization.UnicodeCategory.NonSpacingMark
            || (c is '\'' or '’' or '-' or '‐' or '‑' or '/' or '.' && i + 1 < end && char.IsLetterOrDigit(source.Text[i + 1]));
    }

    private void ScanNumber()
    {
        var start = at;
        var stop = Digits(start + (char.IsAsciiDigit(source.Text[start]) ? 0 : 1));
        var kind = TokenKind.Number;
        while (stop + 1 < end && source.Text[stop] == '.' && char.IsAsciiDigit(source.Text[stop + 1]))
        {
            kind = kind == TokenKind.Number && !source.Text.AsSpan(start, stop - start).Contains('.') ? TokenKind.Number : TokenKind.Version;
            stop = Digits(stop + 1);
        }

        FinishNumber(start, stop, kind);
    }

    private void FinishNumber(int start, int stop, TokenKind kind)
    {
        if (stop + 1 < end && source.Text[stop] == '-' && char.IsLetter(source.Text[stop + 1]))
        {
            ScanWord(start);
            return;
        }

        var reported = Numbers.Report(start, stop, end, kind == TokenKind.Version);
        var last = Math.Max(reported, stop);
        Add(reported > 0 ? TokenKind.Bad : kind, start, last - start);
        at = last;
    }

    private int Digits(int i)
    {
        while (i < end && char.IsAsciiDigit(source.Text[i]))
        {
            i++;
        }

        return i;
    }

    private void ScanQuoted()
    {
        var close = source.Text.IndexOf('"', at + 1, end - at - 1);
        if (close < 0)
        {
            Signs.ReportUnclosedQuote(at, end);
            Add(TokenKind.Bad, at, end - at);
            at = end;
            return;
        }

        Add(TokenKind.Quoted, at, close + 1 - at);
        at = close + 1;
    }

    private void Add(TokenKind kind, int start, int length) =>
        tokens.Add(new Token<TokenKind>(kind, new TextSpan(source.Text, new Position(start, 1, 1), length)));
}
