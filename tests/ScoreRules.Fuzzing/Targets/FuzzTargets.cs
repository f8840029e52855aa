namespace ScoreRules.Fuzzing.Targets;

/// <summary>What can be fed, by name.</summary>
internal static class FuzzTargets
{
    /// <summary>Scanner and parser, the whole reading of a house, and spreadsheets.</summary>
    public static readonly IReadOnlyDictionary<string, Action<string>> All = new SortedDictionary<string, Action<string>>(StringComparer.Ordinal)
    {
        ["parse"] = ParseTarget.Run,
        ["house"] = HouseTarget.Run,
        ["table"] = TableTarget.Run,
    };
}
