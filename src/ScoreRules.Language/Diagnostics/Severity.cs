namespace ScoreRules.Language.Diagnostics;

/// <summary>How much a finding matters.</summary>
public enum Severity
{
    /// <summary>Worth knowing; nothing to mend.</summary>
    Information,

    /// <summary>Probably not what was meant; ranking goes on.</summary>
    Warning,

    /// <summary>Cannot be understood or contradicts itself; stops a ranking.</summary>
    Error,
}
