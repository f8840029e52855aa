namespace ScoreRules.Comparing;

/// <summary>Blocks of a house that are swapped as a whole to see what each does.</summary>
public enum RuleBlock
{
    /// <summary>Whose body is assumed, and whether an even load may stand for a cam that is not recorded.</summary>
    Person,

    /// <summary>Targets: muscles, shares, benchmarks.</summary>
    Targets,

    /// <summary>Movements: which there are, what they train, facts, joints and loads.</summary>
    Movements,

    /// <summary>Criteria and weights.</summary>
    Criteria,

    /// <summary>Called facts and numbers worked out.</summary>
    CalledFacts,

    /// <summary>Points given and taken.</summary>
    Awards,

    /// <summary>Caps and floors.</summary>
    Limits,

    /// <summary>What is left out.</summary>
    Exclusions,

    /// <summary>Tiers and their borders.</summary>
    Tiers,

    /// <summary>Personal judgements.</summary>
    Judgements,

    /// <summary>Studies, and how they are weighed.</summary>
    Evidence,
}
