using System.Text.RegularExpressions;
using ScoreRules.Publishing;

namespace ScoreRules.Report.Views;

/// <summary>What print does to text and the terminal does not: a real minus, blanks that do not break before a unit.</summary>
public static partial class Typeset
{
    /// <summary>A sentence for the page.</summary>
    public static string Text(string text) => Unit().Replace(Hyphen().Replace(text, "−"), "\u00a0");

    /// <summary>Points with a sign and one decimal; "0" for none.</summary>
    public static string Signed(double points) => NumberText.Signed(points) is var text && text == "0.0" ? "0" : text.Replace('-', '−');

    /// <summary>Points with one decimal.</summary>
    public static string Points(double points) => NumberText.Points(points).Replace('-', '−');

    /// <summary>Capital first, all else as the author wrote it.</summary>
    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    [GeneratedRegex(@"(?<![\w.:/-])-(?=\d)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Hyphen();

    [GeneratedRegex(@"(?<=\d) (?=of \d)|(?<=\d of) (?=\d)|(?<=\d) (?=(%|s|kg|cm|mm|m|points?)\b|%)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Unit();
}
