using System.Collections.Immutable;
using System.Globalization;

namespace ScoreRules.Language.Syntax;

/// <summary>The closed list of units that may follow a number.</summary>
internal static class Units
{
    /// <summary>Units as written after a space, besides % and ° which attach.</summary>
    public static ImmutableArray<string> All { get; } =
        ["s", "min", "kg", "g", "m", "cm", "mm", "N", "Nm", "points", "point", "sd", "weeks", "years", "parts", "part", "times", "repetitions", "degrees"];

    /// <summary>Each unit once, as messages list them.</summary>
    public static ImmutableArray<string> Printed { get; } = [.. All.Select(Canonical).Distinct(StringComparer.Ordinal), "%"];

    /// <summary>Whether a word is a unit.</summary>
    public static bool IsUnit(string word) => All.Contains(word, StringComparer.OrdinalIgnoreCase);

    /// <summary>One spelling for each unit: singular and long forms become the printed one.</summary>
    public static string Canonical(string unit) => unit.ToLowerInvariant() switch
    {
        "point" => "points",
        "part" => "parts",
        "degrees" or "º" or "˚" => "°",
        "n" => "N",
        "nm" => "Nm",
        var other => other,
    };

    /// <summary>Reads a scanned number; the scanner has let only digits, one point and a minus through.</summary>
    public static double Parse(string digits) =>
        double.TryParse(digits.Replace('−', '-'), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : double.PositiveInfinity;
}
