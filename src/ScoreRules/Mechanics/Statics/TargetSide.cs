namespace ScoreRules.Mechanics.Statics;

/// <summary>Which way the target's muscles turn the working joint when they shorten.</summary>
public enum TargetSide
{
    /// <summary>They raise the angle: flexors, abductors.</summary>
    Raises,

    /// <summary>They lower the angle: extensors, adductors.</summary>
    Lowers,
}
