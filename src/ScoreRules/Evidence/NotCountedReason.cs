namespace ScoreRules.Evidence;

/// <summary>Why a study, or a part of it, moves nothing.</summary>
public enum NotCountedReason
{
    /// <summary>It had been taken back on the day of the ranking.</summary>
    Withdrawn,

    /// <summary>It measured another outcome than the house judges.</summary>
    OtherOutcome,

    /// <summary>It is to be shown only.</summary>
    ShownOnly,

    /// <summary>The house does not say how far its principles or a lone study may be off.</summary>
    NoScale,

    /// <summary>It is told in standard deviations, and the house does not say what one is worth.</summary>
    NoWorthOfDeviation,

    /// <summary>It is told in %, which cannot be turned into points.</summary>
    Percent,

    /// <summary>It is not trusted at all.</summary>
    NotTrusted,

    /// <summary>It was too unclear.</summary>
    TooUnclear,

    /// <summary>It speaks of a principle: it bears on how far a criterion is believed, not on where a movement stands.</summary>
    Principle,

    /// <summary>It found two classes about the same: no points are given, and a rule that gives some is warned of.</summary>
    ClassesAlike,

    /// <summary>No target ranks both sides, or its regions are in none that does.</summary>
    NotRankedTogether,
}
