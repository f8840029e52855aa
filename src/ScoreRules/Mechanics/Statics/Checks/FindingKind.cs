namespace ScoreRules.Mechanics.Statics.Checks;

/// <summary>What an objection is about.</summary>
public enum FindingKind
{
    /// <summary>A number that is none, out of its range, or in another unit.</summary>
    BadNumber,

    /// <summary>The working joint does not move, or its range is zero or runs the other way.</summary>
    Range,

    /// <summary>A joint beyond what joints allow.</summary>
    JointLimit,

    /// <summary>The resistance or the joint does not fit the method.</summary>
    Method,

    /// <summary>The pulley or anchor stands where it cannot.</summary>
    Pulley,

    /// <summary>A band that never pulls, or a table that ends too early.</summary>
    Table,

    /// <summary>The load helps where the lift begins.</summary>
    SignAtStart,

    /// <summary>A free weight that does not hang where it should.</summary>
    HangingWeight,

    /// <summary>Trunk, hip, knee and ankle do not add up.</summary>
    ChainSum,

    /// <summary>The body would fall over.</summary>
    Balance,

    /// <summary>The foot does not follow the track.</summary>
    FootPath,
}
