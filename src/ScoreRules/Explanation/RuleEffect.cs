namespace ScoreRules.Explanation;

/// <summary>What became of a rule for a placement.</summary>
public enum RuleEffect
{
    /// <summary>It holds and has its effect.</summary>
    Held,

    /// <summary>Its condition does not hold.</summary>
    DidNotHold,

    /// <summary>A fact is unknown, so it cannot be told; the rule has no effect (a caution is shown all the same).</summary>
    CouldNotTell,

    /// <summary>Its condition holds, but the movement or target is excepted.</summary>
    Exempt,

    /// <summary>Its condition holds, but another rule overrides it.</summary>
    Overridden,
}
