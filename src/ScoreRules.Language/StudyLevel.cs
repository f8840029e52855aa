namespace ScoreRules.Language;

/// <summary>What a study compares.</summary>
public enum StudyLevel
{
    /// <summary>Two movements.</summary>
    Movements,

    /// <summary>All movements with one word of an attribute, and all with another.</summary>
    Classes,

    /// <summary>More and less of what a criterion asks for.</summary>
    Amounts,
}
