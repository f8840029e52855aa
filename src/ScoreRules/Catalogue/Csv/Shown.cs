using System.Globalization;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue.Csv;

/// <summary>How text and numbers of a table look in a message.</summary>
internal static class Shown
{
    private const int LongestText = 60;
    private const int MostWords = 8;

    /// <summary>A text in quotes, on one line, cut where it is long.</summary>
    public static string Text(string text)
    {
        var end = Math.Min(text.Length, LongestText);
        if (end < text.Length && char.IsHighSurrogate(text[end - 1]))
        {
            end--;
        }

        var line = string.Join(' ', text[..end].Split(default(char[]), StringSplitOptions.RemoveEmptyEntries));
        return $"\"{DisplayColumns.Printable(line)}{(end < text.Length ? "..." : "")}\"";
    }

    /// <summary>A number as people write it.</summary>
    public static string Number(double number) => number.ToString("0.######", CultureInfo.InvariantCulture);

    /// <summary>What values an attribute takes.</summary>
    public static string Allowed(AttributeDefinition attribute) => attribute.Kind switch
    {
        AttributeKind.Rating => $"rated {Number(attribute.Scale.Low)} to {Number(attribute.Scale.High)}",
        AttributeKind.Measure => attribute.Unit is null ? "a number" : $"measured in {attribute.Unit}",
        AttributeKind.OneOf => $"one of {Words(attribute)}",
        _ => $"some of {Words(attribute)}",
    };

    private static string Words(AttributeDefinition attribute) => attribute.Values.Length <= MostWords
        ? string.Join(", ", attribute.Values)
        : $"{attribute.Values.Length.ToString(CultureInfo.InvariantCulture)} words, the first: {string.Join(", ", attribute.Values.Take(MostWords))}";

    /// <summary>A unit behind a number, as rule text writes it.</summary>
    public static string Unit(string unit) => unit is "%" or "°" ? unit : $" {unit}";

    /// <summary>Where an attribute is declared, as the other half of a finding.</summary>
    public static Label Declared(AttributeDefinition attribute) => new(attribute.Info.Location, Allowed(attribute));
}
