namespace ScoreRules.Mechanics.Statics.Loads;

/// <summary>Where on the body the load acts.</summary>
public enum LoadPoint
{
    /// <summary>In the hand, 0.06 m beyond the wrist.</summary>
    Hand,

    /// <summary>Held in front of the chest; taken at shoulder height.</summary>
    HandsAtChest,

    /// <summary>At the elbow end of the upper arm.</summary>
    UpperArm,

    /// <summary>On the shoulders.</summary>
    Shoulders,

    /// <summary>Held against the trunk, at 0.8 of hip to shoulder (assumed).</summary>
    Trunk,

    /// <summary>On the hips.</summary>
    Pelvis,

    /// <summary>At the knee end of the thigh.</summary>
    Thigh,

    /// <summary>At the ankle end of the shank.</summary>
    Shin,

    /// <summary>On the foot: the ankle cuff when hip or knee works, the ball of the foot when the ankle works.</summary>
    Foot,

    /// <summary>The body through the supporting hands or feet.</summary>
    Body,
}
