namespace ScoreRules.Profiles;

/// <summary>Why a profile sets a movement aside.</summary>
public enum SetAsideKind
{
    /// <summary>Kit is missing.</summary>
    Kit,

    /// <summary>It is rated to load a sore joint.</summary>
    SoreJoint,

    /// <summary>The profile says to avoid it.</summary>
    Avoid,
}
