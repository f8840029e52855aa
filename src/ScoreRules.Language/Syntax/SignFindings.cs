using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax;

/// <summary>Findings about single characters: signs the language does not use, look-alikes, glued numbers, open quotes.</summary>
internal sealed class SignFindings(SourceText source, DiagnosticBag findings)
{
    private const string Homoglyphs = "асеорхуАВСЕНКМОРТХіјѕԁοαινρτυΑΒΕΖΗΙΚΜΝΟΡΤΥΧ";

    /// <summary>Reports the sign at <paramref name="at"/> and says how many characters to pass over.</summary>
    public int Report(int at, int end)
    {
        var c = source.Text[at];
        if (c is '“' or '”' or '„' or '«' or '»')
        {
            Add("SR0003", at, 1, $"This character only looks like a plain double quote: {Describe(c)}", "pasting from a word processor does this", new("write \"", Replace(at, 1, "\""), EditSafety.Safe));
            return 1;
        }

        if (char.IsWhiteSpace(c) && !char.IsControl(c))
        {
            Add("SR0003", at, 1, $"This character only looks like a space: {Describe(c)}", "not an ordinary space", new("write a space", Replace(at, 1, " "), EditSafety.Safe));
            return 1;
        }

        if (DisplayColumns.IsHidden(c) || char.IsSurrogate(c))
        {
            return ReportHidden(at, end);
        }

        return ReportUnused(at, end, c);
    }

    /// <summary>Reports a word that mixes Latin letters with letters of another script which look the same.</summary>
    public bool ReportLookAlikes(int start, int stop)
    {
        var strange = -1;
        var latin = false;
        for (var i = start; i < stop; i++)
        {
            latin |= char.IsAsciiLetter(source.Text[i]);
            strange = strange < 0 && source.Text[i] > 127 && Homoglyphs.Contains(source.Text[i], StringComparison.Ordinal) ? i : strange;
        }

        if (!latin || strange < 0)
        {
            return false;
        }

        Add("SR0003", strange, 1, $"This letter only looks like a Latin one: {Describe(source.Text[strange])}", "a letter of another script", new("type the letter again on your keyboard"));
        return true;
    }

    /// <summary>Reports <c>2,5</c>, <c>8-20</c>, <c>15s</c> and numbers too long to mean anything; the end of what was reported, or 0 when all is well.</summary>
    public int ReportGluedNumber(int start, int stop, int end, bool isVersion)
    {
        var next = stop < end ? source.Text[stop] : ' ';
        var digitFollows = stop + 1 < end && char.IsAsciiDigit(source.Text[stop + 1]);
        if (next == ',' && digitFollows)
        {
            return ReportJoined(start, stop, end, "SR0004", "Numbers are written with a point here, so this reads as two numbers", ".");
        }

        if (next is '-' or '–' && digitFollows)
        {
            return ReportJoined(start, stop, end, "SR0006", "A range is written with the word \"to\"", " to ");
        }

        return char.IsLetter(next) ? ReportUnit(start, stop, end) : isVersion ? 0 : ReportLength(start, stop);
    }

    /// <summary>Reports a quote that is not closed on its line.</summary>
    public void ReportUnclosedQuote(int at, int end) =>
        Add("SR0002", at, 1, "The name that starts here is not closed", "no second \" before the end of the line", new("add \" where the name ends", Replace(end, 0, "\"")));

    private int ReportJoined(int start, int stop, int end, string code, string headline, string joint)
    {
        var last = stop + 1;
        while (last < end && char.IsAsciiDigit(source.Text[last]))
        {
            last++;
        }

        var mended = source.Text[start..stop] + joint + source.Text[(stop + 1)..last];
        Add(code, start, last - start, headline, "one number or two?", new($"write {mended}", Replace(start, last - start, mended), EditSafety.Safe));
        return last;
    }

    private int ReportUnit(int start, int stop, int end)
    {
        var last = stop;
        while (last < end && char.IsLetterOrDigit(source.Text[last]))
        {
            last++;
        }

        var number = source.Text[start..stop];
        var unit = source.Text[stop..last];
        var safety = Units.IsUnit(unit) ? EditSafety.Safe : EditSafety.Shown;
        Add("SR0006", start, last - start, "A space stands between a number and what follows it", "", new($"write {number} {unit}", Replace(stop, 0, " "), safety));
        return last;
    }

    private int ReportLength(int start, int stop)
    {
        if (double.IsFinite(Units.Parse(source.Text[start..stop])) && stop - start <= 20)
        {
            return 0;
        }

        Add("SR0006", start, stop - start, "This number is too long to mean anything here", "", new("write at most 20 digits"));
        return stop;
    }

    private int ReportHidden(int at, int end)
    {
        var stop = at;
        while (stop < end && (DisplayColumns.IsHidden(source.Text[stop]) || char.IsSurrogate(source.Text[stop])))
        {
            stop++;
        }

        var first = source.Text[at];
        var headline = char.IsSurrogate(first) ? "This sign is not used in rule text" : $"A sign that cannot be seen stands here: {Describe(first)}";
        var safety = char.IsSurrogate(first) ? EditSafety.Shown : EditSafety.Safe;
        Add("SR0007", at, stop - at, headline, "", new("take it out", Replace(at, stop - at, ""), safety));
        return stop - at;
    }

    private int ReportUnused(int at, int end, char c)
    {
        var length = c is '>' or '<' && at + 1 < end && source.Text[at + 1] == '=' ? 2 : RunLength(at, end);
        var sign = source.Text.Substring(at, Math.Min(length, 3));
        var words = sign switch { ">" => "is more than", "<" => "is less than", ">=" => "is at least", "<=" => "is at most", "=" => "is", "#" => "note", _ => null };
        Suggestion advice = words is null
            ? new("leave it out, or put the whole name in double quotes")
            : new($"write \"{words}\"", Replace(at, length, words), sign == "#" ? EditSafety.Shown : EditSafety.Safe);
        Add("SR0005", at, length, $"The sign {sign} is not used in rule text", words is null ? "" : $"said in words: {words}", advice);
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

    private void Add(string code, int at, int length, string headline, string label, Suggestion suggestion) =>
        findings.Add(new Diagnostic(code, Severity.Error, headline, new Label(source.At(new SourceSpan(at, length)), label)) { Suggestions = [suggestion] });

    private TextEdit Replace(int at, int length, string with) => new(source.At(new SourceSpan(at, length)), with);

    private static string Describe(char c) => $"U+{(int)c:X4}";
}
