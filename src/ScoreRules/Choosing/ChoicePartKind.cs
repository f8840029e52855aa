namespace ScoreRules.Choosing;

/// <summary>What a part of a choice is about.</summary>
public enum ChoicePartKind
{
    /// <summary>A muscle of the target is a prime mover.</summary>
    Muscle,

    /// <summary>A muscle is loaded where it is long.</summary>
    Long,

    /// <summary>A muscle is loaded where it is short.</summary>
    Short,

    /// <summary>A movement pattern of the target.</summary>
    Pattern,
}
