namespace ScoreRules.Mechanics.Figures;

/// <summary>How limbs lie that a movement says nothing about. For pictures only; no number follows from it.</summary>
public enum RestPosition
{
    /// <summary>Upright or bent over on straight legs; arms hang.</summary>
    Standing,

    /// <summary>Thighs level, shanks down.</summary>
    Seated,

    /// <summary>On the back: thighs in line with the trunk, shanks down.</summary>
    Supine,

    /// <summary>Face down or on the side: legs in line with the trunk.</summary>
    Prone,

    /// <summary>On the knees.</summary>
    Kneeling,

    /// <summary>Thighs level, knees straight.</summary>
    LongSitting,
}
