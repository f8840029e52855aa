namespace ScoreRules.Answers.Firmness;

/// <summary>What weights can do to an order.</summary>
public enum FirmnessVerdict
{
    /// <summary>One weight, changed alone, can put them level.</summary>
    OneWeight,

    /// <summary>No one weight can, several together may.</summary>
    SeveralWeights,

    /// <summary>No weights can: the upper one is at least as good on every criterion by more than awards make up for.</summary>
    Impossible,

    /// <summary>Tiers after limits and judgements decide, against the points, so that weights are not the question.</summary>
    ByTier,

    /// <summary>They have no order, or are not judged by the same criteria.</summary>
    NotComparable,
}
