using System.Collections.Frozen;

namespace ScoreRules.Language.Syntax;

/// <summary>Other ways in which people write a unit, and the unit. Used only in messages.</summary>
internal static class UnitSynonyms
{
    private static readonly FrozenDictionary<string, string> Known = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase)
    {
        ["sec"] = "s",
        ["secs"] = "s",
        ["second"] = "s",
        ["seconds"] = "s",
        ["mins"] = "min",
        ["minute"] = "min",
        ["minutes"] = "min",
        ["kgs"] = "kg",
        ["kilo"] = "kg",
        ["kilos"] = "kg",
        ["kilogram"] = "kg",
        ["kilograms"] = "kg",
        ["gram"] = "g",
        ["grams"] = "g",
        ["metre"] = "m",
        ["metres"] = "m",
        ["meter"] = "m",
        ["meters"] = "m",
        ["deg"] = "°",
        ["degree"] = "°",
        ["percent"] = "%",
        ["pct"] = "%",
        ["pt"] = "points",
        ["pts"] = "points",
        ["rep"] = "repetitions",
        ["reps"] = "repetitions",
        ["week"] = "weeks",
        ["year"] = "years",
        ["x"] = "times",
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>The unit meant, or null.</summary>
    public static string? Find(string written) => Known.GetValueOrDefault(written);
}
