namespace ScoreRules.Language.Binding;

/// <summary>How serious a caution is.</summary>
public enum CautionSeverity
{
    /// <summary>Low.</summary>
    Low,

    /// <summary>Medium.</summary>
    Medium,

    /// <summary>High: never folded away.</summary>
    High,

    /// <summary>Stop: never folded away, and repeated in every form of output.</summary>
    Stop,
}
