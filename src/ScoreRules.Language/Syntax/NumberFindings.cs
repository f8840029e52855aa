using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax;

/// <summary>Findings about how numbers are written: <c>2,5</c>, <c>8-20</c>, <c>15s</c>, <c>4th</c>, too many digits.</summary>
internal sealed class NumberFindings(SourceText source, SignReport report)
{
    private const int MostDigits = 20;
    private const int LongestJoint = 12;
    private static readonly string[] OneNumberFollows = ["at least", "at most", "more than", "less than"];
    private static readonly string[] Ordinals = ["st", "nd", "rd", "th"];

    /// <summary>Reports what is glued to the number at <paramref name="start"/>; the end of what was reported, or 0 when all is well.</summary>
    public int Report(int start, int stop, int end, bool isVersion)
    {
        var next = stop < end ? source.Text[stop] : ' ';
        var digitFollows = stop + 1 < end && char.IsAsciiDigit(source.Text[stop + 1]);
        if (next == ',' && digitFollows)
        {
            return ReportComma(start, stop, end);
        }

        if (next is '-' or '–' && digitFollows)
        {
            return ReportRange(start, stop, end);
        }

        return char.IsLetter(next) && next != 'º' ? ReportGlued(start, stop, end) : isVersion ? 0 : ReportLength(start, stop);
    }

    private int ReportComma(int start, int stop, int end)
    {
        var last = DigitsEnd(stop + 1, end);
        var (whole, rest) = (source.Text[start..stop], source.Text[(stop + 1)..last]);
        var hasPoint = whole.Contains('.', StringComparison.Ordinal);
        var mended = $"{whole.Replace(".", "", StringComparison.Ordinal)}.{rest}";
        report.Add("SR0004", start, last - start, "Numbers are written with a point here, so this reads as two numbers", "one number or two?",
            new($"write {mended}", report.Replace(start, last - start, mended), hasPoint ? EditSafety.Shown : EditSafety.Safe));
        return last;
    }

    private int ReportRange(int start, int stop, int end)
    {
        var last = DigitsEnd(stop + 1, end);
        var before = source.Text[Math.Max(0, start - LongestJoint)..start].TrimEnd();
        var joint = before.EndsWith("between", StringComparison.OrdinalIgnoreCase) ? "and" : "to";

        // "more than 1 to 2 min" is no better than "more than 1-2 min": which of the two numbers is meant?
        var safety = Array.Exists(OneNumberFollows, words => before.EndsWith(words, StringComparison.OrdinalIgnoreCase)) ? EditSafety.Shown : EditSafety.Safe;
        var mended = $"{source.Text[start..stop]} {joint} {source.Text[(stop + 1)..last]}";
        report.Add("SR0006", start, last - start, $"A range is written with the word \"{joint}\"", "one number or two?", new($"write {mended}", report.Replace(start, last - start, mended), safety));
        return last;
    }

    private int DigitsEnd(int at, int end)
    {
        while (at < end && char.IsAsciiDigit(source.Text[at]))
        {
            at++;
        }

        return at;
    }

    private int ReportGlued(int start, int stop, int end)
    {
        var last = stop;
        while (last < end && char.IsLetterOrDigit(source.Text[last]))
        {
            last++;
        }

        var (number, glued) = (source.Text[start..stop], source.Text[stop..last]);
        if (Ordinals.Contains(glued, StringComparer.OrdinalIgnoreCase))
        {
            report.Add("SR0006", start, last - start, $"A day is a plain number, without \"{glued}\"", "", new($"write {number}", report.Replace(stop, glued.Length, ""), EditSafety.Safe));
            return last;
        }

        var unit = UnitSynonyms.Find(glued) ?? glued;
        var mended = unit is "%" or "°" ? unit : $" {unit}";
        var safety = unit != glued || Units.IsUnit(unit) ? EditSafety.Safe : EditSafety.Shown;
        report.Add("SR0006", start, last - start, "A space stands between a number and what follows it", "", new($"write {number}{mended}", report.Replace(stop, glued.Length, mended), safety));
        return last;
    }

    private int ReportLength(int start, int stop)
    {
        if (double.IsFinite(Units.Parse(source.Text.AsSpan(start, stop - start))) && stop - start <= MostDigits)
        {
            return 0;
        }

        report.Add("SR0006", start, stop - start, "This number is too long to mean anything here", "", new($"write at most {MostDigits} digits"));
        return stop;
    }
}
