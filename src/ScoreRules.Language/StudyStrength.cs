namespace ScoreRules.Language;

/// <summary>What a study may do to a ranking.</summary>
public enum StudyStrength
{
    /// <summary>It is shown and moves nothing.</summary>
    Show,

    /// <summary>It pulls on scores, as far as its doubt and that of the principles allow.</summary>
    Weigh,

    /// <summary>It pulls, and after that the order that it found is kept.</summary>
    Decide,
}
