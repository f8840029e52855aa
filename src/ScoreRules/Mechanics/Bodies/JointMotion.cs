namespace ScoreRules.Mechanics.Bodies;

/// <summary>
/// A motion of a joint, segment against segment, or of the trunk in the room. Zero is the anatomical position; each is
/// positive in the direction of its name. An opposite motion (extension, pronation) is the negative of its partner.
/// </summary>
public enum JointMotion
{
    /// <summary>The trunk in the room: 0 upright, 90 face down, -90 face up.</summary>
    TrunkPitch,

    /// <summary>The trunk in the room: positive with the working side up.</summary>
    TrunkRoll,

    /// <summary>Upper arm forward of the trunk; extension is negative.</summary>
    ShoulderFlexion,

    /// <summary>Upper arm away from the side.</summary>
    ShoulderAbduction,

    /// <summary>Upper arm from the frontal plane across the chest; horizontal abduction is negative.</summary>
    ShoulderHorizontalAdduction,

    /// <summary>Upper arm turned outward about its own axis; internal rotation is negative.</summary>
    ShoulderExternalRotation,

    /// <summary>Forearm towards the upper arm.</summary>
    ElbowFlexion,

    /// <summary>Palm turned up, counted from the middle position (palm to the thigh when the arm hangs); pronation is negative.</summary>
    ForearmSupination,

    /// <summary>Hand towards the back of the forearm; flexion is negative.</summary>
    WristExtension,

    /// <summary>Thigh towards the belly; extension is negative.</summary>
    HipFlexion,

    /// <summary>Thigh away from the middle; adduction is negative.</summary>
    HipAbduction,

    /// <summary>Heel towards the buttock.</summary>
    KneeFlexion,

    /// <summary>Foot towards the shin; plantar flexion is negative.</summary>
    AnkleDorsiflexion,
}
