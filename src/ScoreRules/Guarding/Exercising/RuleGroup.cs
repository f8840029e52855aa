namespace ScoreRules.Guarding.Exercising;

/// <summary>Kinds of rule that can move a placement; each is counted by itself.</summary>
public enum RuleGroup
{
    /// <summary>Criteria.</summary>
    Criterion,

    /// <summary>Ways in to called facts.</summary>
    CalledFact,

    /// <summary>Numbers worked out.</summary>
    Recipe,

    /// <summary>Points given and taken.</summary>
    Award,

    /// <summary>Caps and floors.</summary>
    Limit,

    /// <summary>What is left out.</summary>
    Exclusion,

    /// <summary>Personal judgements.</summary>
    Judgement,

    /// <summary>Studies that may move something.</summary>
    Study,
}
