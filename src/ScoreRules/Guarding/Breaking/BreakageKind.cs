namespace ScoreRules.Guarding.Breaking;

/// <summary>What is done to a ruleset to see whether its expectations notice. <c>docs/guarding.md</c> says what each means for each kind of statement.</summary>
public enum BreakageKind
{
    /// <summary>The statement is taken out.</summary>
    Deleted,

    /// <summary>Its number (a weight, points, a fixed number of a recipe) is halved.</summary>
    Halved,

    /// <summary>Its number is doubled.</summary>
    Doubled,

    /// <summary>It says the opposite: worth from the other end, points taken instead of given, a floor instead of a cap, a tier higher instead of lower, the other side of a study.</summary>
    Reversed,

    /// <summary>A border is moved up: a tier begins higher, a limit names the better tier, a condition asks for a higher number, a study may do more.</summary>
    MovedUp,

    /// <summary>A border is moved down.</summary>
    MovedDown,

    /// <summary>One part of a condition, or one step of a recipe, is taken out.</summary>
    PartDeleted,

    /// <summary>One test of a condition asks for the opposite.</summary>
    PartReversed,

    /// <summary><c>only for</c> is taken out: the rule is about everything.</summary>
    OnlyForDeleted,

    /// <summary><c>except for</c> is taken out: the rule spares nothing.</summary>
    ExceptForDeleted,
}
