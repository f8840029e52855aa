namespace ScoreRules.Inference;

/// <summary>What is known of a condition.</summary>
public enum Verdict
{
    /// <summary>It holds.</summary>
    Held,

    /// <summary>It does not hold.</summary>
    DidNotHold,

    /// <summary>A fact is unknown, so it cannot be told.</summary>
    CouldNotTell,
}
