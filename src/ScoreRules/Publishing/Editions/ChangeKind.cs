namespace ScoreRules.Publishing.Editions;

/// <summary>What happened to a movement in a target between two editions.</summary>
public enum ChangeKind
{
    /// <summary>It stands in another tier.</summary>
    OtherTier,

    /// <summary>It was not there before.</summary>
    New,

    /// <summary>It is there no longer.</summary>
    Gone,

    /// <summary>It was ranked and is left out now.</summary>
    LeftOut,

    /// <summary>It was left out and is ranked now.</summary>
    TakenIn,

    /// <summary>It stands in the same tier with other points (a tenth or more).</summary>
    OtherPoints,
}
