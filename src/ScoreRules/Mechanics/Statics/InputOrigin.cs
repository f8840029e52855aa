namespace ScoreRules.Mechanics.Statics;

/// <summary>Where a number that went into a curve came from.</summary>
public enum InputOrigin
{
    /// <summary>The movement states it.</summary>
    Stated,

    /// <summary>It follows from other stated numbers.</summary>
    Derived,

    /// <summary>Nobody states it; the model takes a usual value.</summary>
    Assumed,
}
