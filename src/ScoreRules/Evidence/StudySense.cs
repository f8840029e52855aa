namespace ScoreRules.Evidence;

/// <summary>How a study speaks of a difference in a target.</summary>
public enum StudySense
{
    /// <summary>It is at least so much: a lead that is enough is left alone.</summary>
    AtLeast,

    /// <summary>It is so much, give or take.</summary>
    Measured,

    /// <summary>It lies within a range: a difference inside is left alone.</summary>
    Within,
}
