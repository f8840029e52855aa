namespace ScoreRules.Mechanics.Statics.Checks;

/// <summary>How much an objection weighs.</summary>
public enum FindingSeverity
{
    /// <summary>Worth a look; the curve stands.</summary>
    Warning,

    /// <summary>Cannot be so; there is no curve.</summary>
    Refused,
}
