namespace ScoreRules.Language;

/// <summary>Kinds of expectation.</summary>
public enum ClaimKind
{
    /// <summary>Ranks above another movement.</summary>
    Above,

    /// <summary>At least so many points above another movement.</summary>
    AtLeastAbove,

    /// <summary>Within so many points of another movement.</summary>
    Within,

    /// <summary>In a tier.</summary>
    InTier,

    /// <summary>In a tier or a worse one.</summary>
    NoHigher,

    /// <summary>In a tier or a better one.</summary>
    NoLower,

    /// <summary>Left out, perhaps by a named rule.</summary>
    LeftOut,

    /// <summary>A called fact holds.</summary>
    Called,

    /// <summary>A called fact does not hold.</summary>
    OtherThan,

    /// <summary>A target has at least so many (or such a share) in tiers.</summary>
    HasAtLeast,

    /// <summary>A target has at most so many (or such a share) in tiers.</summary>
    HasAtMost,
}
