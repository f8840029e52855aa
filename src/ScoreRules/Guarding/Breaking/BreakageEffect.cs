namespace ScoreRules.Guarding.Breaking;

/// <summary>What a breakage does.</summary>
public enum BreakageEffect
{
    /// <summary>Every placement keeps its tier: nothing that matters is broken, and it does not count.</summary>
    NothingMoved,

    /// <summary>A target can no longer be ranked: <c>check</c> itself reports that, and it does not count.</summary>
    NotRanked,

    /// <summary>A tier moved, and an expectation fails that held before.</summary>
    Noticed,

    /// <summary>A tier moved, and no expectation notices.</summary>
    Unnoticed,
}
