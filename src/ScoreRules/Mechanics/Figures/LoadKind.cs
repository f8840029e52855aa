namespace ScoreRules.Mechanics.Figures;

/// <summary>What a load line stands for.</summary>
public enum LoadKind
{
    /// <summary>A weight that is lifted.</summary>
    Weight,

    /// <summary>The weight of the body itself; drawn at the trunk.</summary>
    BodyWeight,

    /// <summary>A cable.</summary>
    Cable,

    /// <summary>An elastic band.</summary>
    Band,

    /// <summary>The pad of a machine.</summary>
    Pad,

    /// <summary>The platform of a sled.</summary>
    Platform,
}
