namespace ScoreRules.Language.Binding;

/// <summary>How firmly an author believes in a statement.</summary>
public enum Credence
{
    /// <summary>Nothing said; counts as sure, and is counted.</summary>
    NotSaid,

    /// <summary><c>we are sure</c>.</summary>
    Firm,

    /// <summary><c>we think so</c>.</summary>
    Probable,

    /// <summary><c>we may be wrong</c>.</summary>
    Shaky,
}
