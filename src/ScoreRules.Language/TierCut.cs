namespace ScoreRules.Language;

/// <summary>What a tier's border is measured by.</summary>
public enum TierCut
{
    /// <summary>From so many points above the benchmark.</summary>
    Above,

    /// <summary>From so many points below the benchmark.</summary>
    Below,

    /// <summary>Within so many points of the benchmark.</summary>
    Within,

    /// <summary>From a score.</summary>
    Score,

    /// <summary>The best share of the movements.</summary>
    Top,

    /// <summary>Whatever is left.</summary>
    Rest,
}
