using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Statics.Methods;

/// <summary>A way to find the moment about the working joint. Nothing is allocated for a step.</summary>
internal interface IMomentMethod
{
    /// <summary>The moments in one posture.</summary>
    MomentParts At(in JointAngles angles);
}
