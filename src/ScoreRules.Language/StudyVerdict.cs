namespace ScoreRules.Language;

/// <summary>What a study says of two sides.</summary>
public enum StudyVerdict
{
    /// <summary>At least so much better; one-sided.</summary>
    BetterThan,

    /// <summary>Measured better by an amount; two-sided.</summary>
    MeasuredBetter,

    /// <summary>About the same, within the house's margin.</summary>
    AboutTheSame,

    /// <summary>Within so many points.</summary>
    Within,

    /// <summary>Unclear: listed, no effect.</summary>
    Unclear,

    /// <summary>Split by region.</summary>
    Split,
}
