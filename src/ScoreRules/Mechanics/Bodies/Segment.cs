namespace ScoreRules.Mechanics.Bodies;

/// <summary>A rigid part of the body. Arms and legs are those of one side.</summary>
public enum Segment
{
    /// <summary>Vertex to mid-gonion.</summary>
    Head,

    /// <summary>Suprasternal notch to the middle of the hip joints.</summary>
    Trunk,

    /// <summary>Shoulder joint to elbow joint.</summary>
    UpperArm,

    /// <summary>Elbow joint to wrist joint.</summary>
    Forearm,

    /// <summary>Wrist joint to the third knuckle.</summary>
    Hand,

    /// <summary>Hip joint to knee joint.</summary>
    Thigh,

    /// <summary>Knee joint to ankle joint.</summary>
    Shank,

    /// <summary>Heel to tip of the toes.</summary>
    Foot,
}
