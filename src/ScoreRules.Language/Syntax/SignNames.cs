using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax;

/// <summary>What messages call a character that the language does not use: in words where there is a plain one, with its number.</summary>
internal static class SignNames
{
    /// <summary>Letters of other scripts that look like Latin ones: Cyrillic, then Greek.</summary>
    public const string Homoglyphs = "асеорхуАВСЕНКМОРТХіјѕԁοαινρτυΑΒΕΖΗΙΚΜΝΟΡΤΥΧ";

    private const string Latin = "aceopxyABCEHKMOPTXijsdoaivptuABEZHIKMNOPTYX";

    /// <summary>What a text was meant to be: Latin letters for those that only look like them, ordinary spaces, nothing that cannot be seen.</summary>
    public static string Meant(string text) => string.Concat(text.Where(c => !DisplayColumns.IsHidden(c)).Select(Meant));

    private static char Meant(char c) => Homoglyphs.IndexOf(c, StringComparison.Ordinal) is var twin && twin >= 0 ? Latin[twin] : char.IsWhiteSpace(c) ? ' ' : c;

    /// <summary>A character in words, such as "a no-break space (U+00A0)".</summary>
    public static string Describe(char c)
    {
        var words = c switch
        {
            '“' or '”' or '„' or '«' or '»' or '‘' or '’' or '‚' => "a curly quote",
            '\'' => "a single quote",
            'º' => "an ordinal mark",
            '˚' => "a ring",
            '\u00A0' or '\u202F' => "a no-break space",
            '\u200B' => "a zero-width space",
            '\u200C' or '\u200D' => "a zero-width joiner",
            '\uFEFF' => "a byte order mark",
            >= '\u0370' and <= '\u03FF' => "a Greek letter",
            >= '\u0400' and <= '\u052F' => "a Cyrillic letter",
            _ => IsDirection(c) ? "a direction mark" : char.IsControl(c) ? "a control character" : "the character",
        };
        return $"{words} (U+{(int)c:X4})";
    }

    private static bool IsDirection(char c) => c is '\u200E' or '\u200F' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');
}
