namespace ScoreRules.Comparing;

/// <summary>What happened to a movement in a target.</summary>
public enum PlacementChangeKind
{
    /// <summary>It stands in another tier.</summary>
    OtherTier,

    /// <summary>It stands in the same tier at another rank or gap.</summary>
    SameTier,

    /// <summary>It was not in this list at all.</summary>
    New,

    /// <summary>It is no longer in this list at all.</summary>
    Gone,

    /// <summary>It was ranked and is left out now.</summary>
    NowLeftOut,

    /// <summary>It was left out and is ranked now.</summary>
    NowRanked,
}
