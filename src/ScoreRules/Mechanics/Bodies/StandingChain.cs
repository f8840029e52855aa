namespace ScoreRules.Mechanics.Bodies;

/// <summary>Standing with the feet flat: trunk pitch = ankle dorsiflexion - knee flexion + hip flexion, degrees.</summary>
public static class StandingChain
{
    /// <summary>Trunk pitch that follows from the three joints, degrees.</summary>
    /// <param name="angles">The posture.</param>
    public static double TrunkPitch(in JointAngles angles) =>
        angles[JointMotion.AnkleDorsiflexion] - angles[JointMotion.KneeFlexion] + angles[JointMotion.HipFlexion];

    /// <summary>Forward lean of the shank that follows from trunk, hip and knee, degrees; equals ankle dorsiflexion on a flat foot.</summary>
    /// <param name="angles">The posture.</param>
    public static double ShankLean(in JointAngles angles) =>
        angles[JointMotion.TrunkPitch] + angles[JointMotion.KneeFlexion] - angles[JointMotion.HipFlexion];

    /// <summary>Trunk pitch that puts a weight at the shoulders over a point of the ground: sin t = distance of the point ahead of the hip / trunk length.</summary>
    /// <param name="body">Whose body.</param>
    /// <param name="aheadOfHip">How far ahead of the hip the point lies, m.</param>
    /// <returns>Degrees, or null when the trunk is too short to reach it.</returns>
    public static double? TrunkPitchToCarryOver(BodyDimensions body, double aheadOfHip) =>
        Math.Abs(aheadOfHip) <= body.TrunkMetres ? Degrees.Asin(aheadOfHip / body.TrunkMetres) : null;
}
