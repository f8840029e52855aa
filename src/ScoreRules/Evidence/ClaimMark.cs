namespace ScoreRules.Evidence;

/// <summary>How principles fare against a study.</summary>
public enum ClaimMark
{
    /// <summary>They say what it found: the same direction, or no larger difference than it found.</summary>
    Hit,

    /// <summary>They hold the two level where it found one better.</summary>
    Level,

    /// <summary>They say the opposite, or a difference where it found none.</summary>
    Missed,
}
