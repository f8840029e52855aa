namespace ScoreRules.Choosing;

/// <summary>What a limit of a choice is about.</summary>
public enum ChoiceLimitKind
{
    /// <summary>How many movements.</summary>
    Count,

    /// <summary>A called fact that one must have.</summary>
    Cover,

    /// <summary>So many must meet a condition.</summary>
    Include,

    /// <summary>The sum of a number.</summary>
    Total,

    /// <summary>How alike two may be.</summary>
    Alike,

    /// <summary>What two may not differ by alone.</summary>
    DifferOnlyBy,

    /// <summary>A target that one must train.</summary>
    Target,

    /// <summary>A major muscle group that one must train.</summary>
    MajorGroup,
}
