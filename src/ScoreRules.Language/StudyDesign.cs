namespace ScoreRules.Language;

/// <summary>How a study compared.</summary>
public enum StudyDesign
{
    /// <summary>Not said.</summary>
    NotSaid,

    /// <summary>Both sides on the same people, such as one leg each way.</summary>
    WithinPerson,

    /// <summary>One group of people for each side.</summary>
    BetweenGroups,

    /// <summary>Observed, nothing was assigned.</summary>
    Observed,

    /// <summary>Several studies taken together.</summary>
    Pooled,
}
