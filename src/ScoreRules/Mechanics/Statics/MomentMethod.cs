namespace ScoreRules.Mechanics.Statics;

/// <summary>Which free body is cut out to find the moment about the working joint.</summary>
public enum MomentMethod
{
    /// <summary>Arm free to move, or a body moved by an arm whose forearm is stated: all forces beyond the joint.</summary>
    OpenArm,

    /// <summary>Leg free to move: all forces beyond the joint.</summary>
    OpenLeg,

    /// <summary>Bar presses and pulls out of the sagittal plane: the forearm is taken in line with the load, so the force goes through the elbow.</summary>
    InLine,

    /// <summary>Standing on flat feet: the ground pushes up at mid-foot.</summary>
    FootReaction,

    /// <summary>A sled on a track: the platform pushes on the foot along the track.</summary>
    Sled,

    /// <summary>The trunk turns over the hips: hinges and back extensions.</summary>
    TrunkOverHips,

    /// <summary>Shoulders and feet are supported, the hips are free: bridges, thrusts, leg curls with the hips up.</summary>
    Bridge,

    /// <summary>The body turns over the knees, forward or back.</summary>
    BodyOverKnees,

    /// <summary>The ball of the foot carries; the ankle stands above and behind it.</summary>
    CalfLever,
}
