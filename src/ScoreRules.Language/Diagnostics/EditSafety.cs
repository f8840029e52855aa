namespace ScoreRules.Language.Diagnostics;

/// <summary>Whether an edit may be made without asking.</summary>
public enum EditSafety
{
    /// <summary>There is one sensible meaning: the edit may be applied for the author.</summary>
    Safe,

    /// <summary>There are several meanings: the edit is only shown.</summary>
    Shown,
}
