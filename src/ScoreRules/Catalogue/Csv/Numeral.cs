using System.Globalization;

namespace ScoreRules.Catalogue.Csv;

/// <summary>A number at the beginning of a cell, as written, and what stands behind it.</summary>
/// <param name="Digits">The number, its sign and marks included.</param>
/// <param name="Rest">What stands behind it: a unit, or nothing.</param>
internal readonly record struct Numeral(CsvCell Digits, CsvCell Rest)
{
    private const int LongestNumber = 40;

    /// <summary>The number at the beginning of a cell, or null when it does not begin with one.</summary>
    public static Numeral? At(CsvCell cell)
    {
        var raw = cell.Raw;
        var end = raw.Length > 0 && raw[0] is '-' or '−' ? 1 : 0;
        while (end < raw.Length && (char.IsAsciiDigit(raw[end]) || (IsMark(raw[end]) && end + 1 < raw.Length && char.IsAsciiDigit(raw[end + 1]))))
        {
            end++;
        }

        return end is 0 or > LongestNumber || !char.IsAsciiDigit(raw[end - 1])
            ? null
            : new Numeral(cell.Part(0, end), cell.Part(end, raw.Length));
    }

    /// <summary>The number; a comma is read as the decimal mark.</summary>
    public double Value => double.Parse(Digits.Text.Replace(',', '.').Replace('−', '-'), NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>Whether its marks leave open where the decimals begin.</summary>
    /// <param name="mayBeThousands">Whether a comma before three digits could group thousands.</param>
    public bool IsAmbiguous(bool mayBeThousands) => Marks() switch
    {
        [] or ['.'] => false,
        [','] => mayBeThousands && LooksGrouped(),
        _ => true,
    };

    /// <summary>What the number may mean, as it would be written with a point; the decimal reading first.</summary>
    public IEnumerable<string> Meanings()
    {
        var (text, marks) = (Digits.Text.Replace('−', '-'), Marks());
        var last = marks.Length == 0 ? ' ' : marks[^1];
        var isDecimal = last is '.' or ',' && marks.Count(mark => mark == last) == 1;
        if (isDecimal)
        {
            var at = text.LastIndexOf(last);
            yield return $"{Bare(text[..at])}.{text[(at + 1)..]}";
        }

        if (!isDecimal || marks.Length == 1)
        {
            yield return Bare(text);
        }
    }

    private char[] Marks() => [.. Digits.Text.Where(IsMark)];

    // 1,500 may be read either way; 0,500 and 1500,250 may not.
    private bool LooksGrouped()
    {
        var text = Digits.Text.TrimStart('-', '−');
        var comma = text.IndexOf(',', StringComparison.Ordinal);
        return comma is >= 1 and <= 3 && text[0] != '0' && text.Length - comma - 1 == 3;
    }

    private static string Bare(string text) => string.Concat(text.Where(c => !IsMark(c)));

    private static bool IsMark(char c) => c is '.' or ',' or '\'' or '’' or ' ' or '\u00A0' or '\u202F';
}
