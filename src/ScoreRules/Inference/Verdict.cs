namespace ScoreRules.Inference;

/// <summary>What became of a condition for one row.</summary>
public enum Verdict
{
    /// <summary>It holds.</summary>
    Held,

    /// <summary>It does not hold.</summary>
    DidNotHold,

    /// <summary>A fact that would decide is unknown.</summary>
    CouldNotTell,
}
