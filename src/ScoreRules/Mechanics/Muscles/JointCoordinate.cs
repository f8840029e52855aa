namespace ScoreRules.Mechanics.Muscles;

/// <summary>An angle over which muscle lengths are tabulated. The sign is that of the data: see each member.</summary>
public enum JointCoordinate
{
    /// <summary>Thigh towards the belly.</summary>
    HipFlexion,

    /// <summary>Thigh towards the middle; abduction is negative.</summary>
    HipAdduction,

    /// <summary>Heel towards the buttock.</summary>
    KneeFlexion,

    /// <summary>Foot towards the shin.</summary>
    AnkleDorsiflexion,

    /// <summary>Forearm towards the upper arm.</summary>
    ElbowFlexion,

    /// <summary>Upper arm forward, in the sagittal plane only: the angle for the muscles that cross shoulder and elbow.</summary>
    ShoulderFlexion,

    /// <summary>Plane in which the upper arm is raised: 0 to the side, 90 forward, 135 across the chest, -90 backward.</summary>
    ShoulderPlane,

    /// <summary>Upper arm from hanging (0), against the trunk, in whichever plane.</summary>
    ShoulderElevation,
}
