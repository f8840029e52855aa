namespace ScoreRules.Mechanics.Statics.Curves;

/// <summary>A third of the range of a lifting phase.</summary>
public enum Third
{
    /// <summary>Where the lifting phase begins: as a rule the target is longest here.</summary>
    First,

    /// <summary>The middle.</summary>
    Middle,

    /// <summary>Where the lifting phase ends.</summary>
    Last,
}
