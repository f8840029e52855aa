using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax;

/// <summary>Findings about single characters: signs the language does not use, look-alikes, what cannot be seen, open quotes.</summary>
internal sealed class SignFindings(SourceText source, SignReport report)
{
    private const string ClosingQuotes = "”“»«";
    private const string SingleQuotes = "’‘'";
    private const int MostShown = 3;
    private const int LongestVerb = 8;
    private int spacesReportedTo = -1;

    /// <summary>Reports the sign at <paramref name="at"/>; says how many characters to pass over, and as what token (null for none).</summary>
    public (int Length, TokenKind? Kind) Report(int at, int end)
    {
        var c = source.Text[at];
        return c switch
        {
            '“' or '”' or '„' or '«' or '»' => ReportQuotes(at, end, ClosingQuotes),
            '‘' or '’' or '‚' or '\'' => ReportQuotes(at, end, SingleQuotes),
            '(' or '[' or '{' => (ReportBrackets(at, end), TokenKind.Bad),
            'º' or '˚' => ReportDegree(at),
            '.' when at + 1 < end && char.IsAsciiDigit(source.Text[at + 1]) => ReportPoint(at, end),
            _ when char.IsWhiteSpace(c) && !char.IsControl(c) => ReportSpace(at, end),
            _ when DisplayColumns.IsHidden(c) || char.IsSurrogate(c) => (ReportHidden(at, end), TokenKind.Bad),
            _ => (ReportUnused(at, end), TokenKind.Bad),
        };
    }

    /// <summary>Reports a word that mixes Latin letters with letters of another script which look the same.</summary>
    public bool ReportLookAlikes(int start, int stop)
    {
        var strange = -1;
        var latin = false;
        for (var i = start; i < stop; i++)
        {
            latin |= char.IsAsciiLetter(source.Text[i]);
            strange = strange < 0 && source.Text[i] > 127 && SignNames.Homoglyphs.Contains(source.Text[i], StringComparison.Ordinal) ? i : strange;
        }

        if (!latin || strange < 0)
        {
            return false;
        }

        report.Add("SR0003", strange, 1, $"This letter only looks like a Latin one: it is {SignNames.Describe(source.Text[strange])}", "a letter of another script", new("type the letter again on your keyboard"));
        return true;
    }

    /// <summary>Reports a quote that is not closed on its line.</summary>
    public void ReportUnclosedQuote(int at, int end) =>
        report.Add("SR0002", at, 1, "The name that starts here is not closed", "no second \" before the end of the line", new("add \" where the name ends", report.Replace(end, 0, "\"")));

    // A pair of other quotes is one slip, and what stands between them is still one name.
    private (int Length, TokenKind? Kind) ReportQuotes(int at, int end, string closing)
    {
        var c = source.Text[at];
        var close = Closing(at, end, closing);
        if (close < 0)
        {
            report.Add("SR0003", at, 1, $"This only looks like a double quote: it is {SignNames.Describe(c)}", "pasting from a word processor does this", new("write \"", report.Replace(at, 1, "\""), EditSafety.Safe));
            return (1, TokenKind.Bad);
        }

        var length = close + 1 - at;
        var plain = $"\"{source.Text[(at + 1)..close]}\"";
        report.Add("SR0003", at, length, $"A name is put in plain double quotes: the first sign here is {SignNames.Describe(c)}", "other quotes", new($"write {plain}", report.Replace(at, length, plain), EditSafety.Safe));
        return (length, TokenKind.Quoted);
    }

    // The closing quote ends a word, so that an apostrophe inside one is none.
    private int Closing(int at, int end, string closing)
    {
        for (var i = at + 2; i < end; i++)
        {
            if (closing.Contains(source.Text[i], StringComparison.Ordinal) && (i + 1 == end || !char.IsLetterOrDigit(source.Text[i + 1])))
            {
                return i;
            }
        }

        return -1;
    }

    // A pair of brackets is one slip.
    private int ReportBrackets(int at, int end)
    {
        var open = source.Text[at];
        var close = source.Text.AsSpan(at, end - at).IndexOf(open switch { '(' => ')', '[' => ']', _ => '}' });
        var length = close < 0 ? 1 : close + 1;
        report.Add("SR0005", at, length, "Brackets are not used in rule text", "", new("leave them out; a remark has a line of its own: \"note ...\", a reason too: \"because ...\""));
        return length;
    }

    private (int Length, TokenKind? Kind) ReportDegree(int at)
    {
        report.Add("SR0003", at, 1, $"This sign only looks like the sign for degrees: it is {SignNames.Describe(source.Text[at])}", "another sign", new("write °", report.Replace(at, 1, "°"), EditSafety.Safe));
        return (1, TokenKind.Degree);
    }

    private (int Length, TokenKind? Kind) ReportPoint(int at, int end)
    {
        var stop = at + 1;
        while (stop < end && char.IsAsciiDigit(source.Text[stop]))
        {
            stop++;
        }

        report.Add("SR0006", at, stop - at, "A number begins with a digit", "", new($"write 0{source.Text[at..stop]}", report.Replace(at, 0, "0"), EditSafety.Safe));
        return (stop - at, TokenKind.Bad);
    }

    // All such spaces of a line are one slip: the text was pasted.
    private (int Length, TokenKind? Kind) ReportSpace(int at, int end)
    {
        if (at > spacesReportedTo)
        {
            var last = at;
            for (var i = at; i < end; i++)
            {
                last = IsOddSpace(source.Text[i]) ? i : last;
            }

            spacesReportedTo = last;
            var mended = string.Concat(source.Text[at..(last + 1)].Select(c => IsOddSpace(c) ? ' ' : c));
            report.Add("SR0003", at, 1, $"This only looks like a space: it is {SignNames.Describe(source.Text[at])}", "pasting from a word processor does this", new("write ordinary spaces", report.Replace(at, last + 1 - at, mended), EditSafety.Safe));
        }

        return (1, null);
    }

    private static bool IsOddSpace(char c) => c is not (' ' or '\t') && char.IsWhiteSpace(c) && !char.IsControl(c);

    private int ReportHidden(int at, int end)
    {
        var stop = at;
        while (stop < end && (DisplayColumns.IsHidden(source.Text[stop]) || char.IsSurrogate(source.Text[stop])))
        {
            stop++;
        }

        var first = source.Text[at];
        var headline = char.IsSurrogate(first) ? "This sign is not used in rule text" : $"Something that cannot be seen stands here: {SignNames.Describe(first)}";
        var safety = char.IsSurrogate(first) ? EditSafety.Shown : EditSafety.Safe;
        report.Add("SR0007", at, stop - at, headline, "", new("take it out", report.Replace(at, stop - at, ""), safety));
        return stop - at;
    }

    private int ReportUnused(int at, int end)
    {
        var sign = SignWords.SignAt(source.Text, at, end);
        var length = sign.Length == 1 ? RunLength(at, end) : sign.Length;
        var shown = source.Text.Substring(at, Math.Min(length, MostShown));
        var before = source.Text[Math.Max(0, at - LongestVerb)..at];
        var words = SignWords.Find(shown, before.TrimEnd());
        if (words is null)
        {
            report.Add("SR0005", at, length, $"The sign {shown} is not used in rule text", "", new(SignWords.Advice(shown)));
            return length;
        }

        var spaced = SignWords.Spaced(words, before, at + length < end ? source.Text[at + length] : ' ');
        report.Add("SR0005", at, length, $"The sign {shown} is not used in rule text", "", new($"write \"{words}\"", report.Replace(at, length, spaced), sign == "#" ? EditSafety.Shown : EditSafety.Safe));
        return length;
    }

    // Many of the same sign in a row are one slip.
    private int RunLength(int at, int end)
    {
        var stop = at + 1;
        while (stop < end && source.Text[stop] == source.Text[at])
        {
            stop++;
        }

        return stop - at;
    }
}
