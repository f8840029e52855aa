using System.Text;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Formatting;

/// <summary>Prints the tokens of one line: one blank between words, none before a comma, signs attached, units in one spelling.</summary>
internal sealed class LinePrinter(SourceText source, StringBuilder text)
{
    private readonly TokenReader reader = new(source);
    private IReadOnlyList<ScannedToken> tokens = [];

    /// <summary>Appends the tokens of a stretch that runs to the end of its line; the line end is left to the caller.</summary>
    /// <param name="rest">The stretch.</param>
    /// <param name="mode">Where free text begins in it.</param>
    public void Append(SourceSpan rest, ScanMode mode)
    {
        tokens = reader.Read(rest, mode);
        for (var i = 0; i < tokens.Count; i++)
        {
            if (tokens[i].Kind == TokenKind.Text)
            {
                AppendFreeText(i == 0 ? rest.Start : tokens[i - 1].Span.End, rest.End);
                return;
            }

            AppendToken(i);
        }
    }

    // Free text is the author's: from its first sign to its last nothing is touched, a pair of quotes round it included.
    private void AppendFreeText(int start, int end) => Append(source.Text[start..end].TrimStart(' ', '\t'), attached: false);

    private void AppendToken(int index)
    {
        var (kind, span) = tokens[index];
        var written = source.Slice(span);
        switch (kind)
        {
            case TokenKind.Comma:
                Append(written, attached: true);
                break;
            case TokenKind.Percent or TokenKind.Degree:
                Append(written, attached: FollowsNumber(index));
                break;
            case TokenKind.Word when IsUnit(index, written):
                AppendUnit(written, source.Slice(tokens[index - 1].Span));
                break;
            default:
                Append(ReservedWords.IsReserved(kind) ? written.ToLowerInvariant() : written, attached: false);
                break;
        }
    }

    private void AppendUnit(string written, string number)
    {
        var unit = Units.Canonical(written);
        var one = number == "1";
        Append(one && unit == "points" ? "point" : one && unit == "parts" ? "part" : unit, attached: unit == "°");
    }

    // "4 m 2031" would be a (wrong) date, and the word between two numbers its month.
    private bool IsUnit(int index, string word) =>
        FollowsNumber(index) && Units.IsUnit(word) && !(index + 1 < tokens.Count && tokens[index + 1].Kind == TokenKind.Number);

    private bool FollowsNumber(int index) => index > 0 && tokens[index - 1].Kind == TokenKind.Number;

    private void Append(string words, bool attached)
    {
        if (!attached && text.Length > 0 && text[^1] is not (' ' or '\n'))
        {
            text.Append(' ');
        }

        text.Append(words);
    }
}
