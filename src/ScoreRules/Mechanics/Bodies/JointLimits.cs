using System.Collections.Immutable;

namespace ScoreRules.Mechanics.Bodies;

/// <summary>
/// Ranges of adult joints: the usual value (AAOS where given) and the widest mean of the opened sources. Two limits depend on
/// the joint next door: see <see cref="Ankle"/> and <see cref="HipWithKnee"/>.
/// </summary>
public static class JointLimits
{
    private const string Goniometry = "goniometry textbook table A.1 (AAOS, AMA and study means)";
    private const string Cards = "study-card set (opened), AAOS from memory";
    private const string Manual = "medical manual table (opened), AAOS from memory";
    private const string Memory = "from memory, no source";

    /// <summary>Limits of single joints.</summary>
    public static ImmutableArray<JointLimit> Single { get; } =
    [
        new(JointMotion.ShoulderFlexion, true, 180, 188, Goniometry), new(JointMotion.ShoulderFlexion, false, -60, -89, Goniometry),
        new(JointMotion.ShoulderAbduction, true, 180, 188, Goniometry), new(JointMotion.ShoulderAbduction, false, -30, -50, Memory),
        new(JointMotion.ShoulderHorizontalAdduction, true, 135, 140, Cards), new(JointMotion.ShoulderHorizontalAdduction, false, -45, -55, Cards),
        new(JointMotion.ShoulderExternalRotation, true, 90, 134, Goniometry), new(JointMotion.ShoulderExternalRotation, false, -70, -94, Goniometry),
        new(JointMotion.ElbowFlexion, true, 150, 158, Goniometry), new(JointMotion.ElbowFlexion, false, 0, -10, Goniometry),
        new(JointMotion.ForearmSupination, true, 80, 96, Goniometry), new(JointMotion.ForearmSupination, false, -80, -96, Goniometry),
        new(JointMotion.WristExtension, true, 70, 89, Goniometry), new(JointMotion.WristExtension, false, -80, -96, Goniometry),
        new(JointMotion.HipFlexion, true, 120, 135, Manual), new(JointMotion.HipFlexion, false, -20, -30, Manual),
        new(JointMotion.HipAbduction, true, 45, 50, Manual), new(JointMotion.HipAbduction, false, -25, -30, Cards),
        new(JointMotion.KneeFlexion, true, 135, 150, Manual), new(JointMotion.KneeFlexion, false, 0, -10, Cards),
        new(JointMotion.AnkleDorsiflexion, false, -50, -65, Manual),
    ];

    /// <summary>
    /// Dorsiflexion: 20 degrees unloaded; under load 30 with a straight knee and 40 with the knee bent 20 degrees or more,
    /// because the gastrocnemius is slack then (loaded values from memory).
    /// </summary>
    /// <param name="isLoaded">Whether the foot carries.</param>
    /// <param name="kneeFlexion">Degrees.</param>
    public static JointLimit Ankle(bool isLoaded, double kneeFlexion) => (isLoaded, kneeFlexion >= 20) switch
    {
        (true, true) => new(JointMotion.AnkleDorsiflexion, true, 30, 40, "loaded with a bent knee, from memory"),
        (true, false) => new(JointMotion.AnkleDorsiflexion, true, 20, 30, "loaded with a straight knee, from memory"),
        _ => new(JointMotion.AnkleDorsiflexion, true, 20, 20, Manual),
    };

    /// <summary>Hip flexion the hamstrings allow: 100 degrees with a straight knee and one more for each degree of knee flexion; from memory, no source.</summary>
    /// <param name="kneeFlexion">Degrees.</param>
    public static double HipWithKnee(double kneeFlexion) => 100 + Math.Max(0, kneeFlexion);
}
