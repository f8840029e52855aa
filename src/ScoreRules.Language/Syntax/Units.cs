using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;

namespace ScoreRules.Language.Syntax;

/// <summary>The closed list of units that may follow a number.</summary>
internal static class Units
{
    /// <summary>Units as written after a space, besides % and ° which attach.</summary>
    public static ImmutableArray<string> All { get; } =
        ["s", "min", "kg", "g", "m", "cm", "mm", "N", "Nm", "points", "point", "sd", "weeks", "years", "parts", "part", "times", "repetitions", "degrees"];

    private static readonly FrozenDictionary<string, string>.AlternateLookup<ReadOnlySpan<char>> Spelling =
        All.ToFrozenDictionary(unit => unit, Spelled, StringComparer.OrdinalIgnoreCase).GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>Each unit once, as messages list them.</summary>
    public static ImmutableArray<string> Printed { get; } = [.. All.Select(Spelled).Distinct(StringComparer.Ordinal), "%"];

    /// <summary>Whether a word is a unit.</summary>
    public static bool IsUnit(ReadOnlySpan<char> word) => Spelling.ContainsKey(word);

    /// <summary>One spelling for each unit: singular and long forms become the printed one.</summary>
    public static string Canonical(ReadOnlySpan<char> unit) => Spelling.TryGetValue(unit, out var printed) ? printed : Spelled(unit.ToString());

    /// <summary>Reads a scanned number; the scanner has let only digits, one point and a minus through.</summary>
    public static double Parse(ReadOnlySpan<char> digits) =>
        double.TryParse(digits.Contains('−') ? digits.ToString().Replace('−', '-') : digits, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : double.PositiveInfinity;

    private static string Spelled(string unit) => unit.ToLowerInvariant() switch
    {
        "point" => "points",
        "part" => "parts",
        "degrees" or "º" or "˚" => "°",
        "n" => "N",
        "nm" => "Nm",
        var other => other,
    };
}
