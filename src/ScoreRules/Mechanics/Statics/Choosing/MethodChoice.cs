using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Methods;

namespace ScoreRules.Mechanics.Statics.Choosing;

/// <summary>
/// How the method follows from what a movement states.
/// An arm works: in line with the load when elbow and shoulder move and the shoulder moves out of the sagittal plane (the turn
/// of the upper arm is not stated then), else by its own posture.
/// A leg works: free when the chain is open; else the ankle by the calf's lever, a sled by its track, and the rest by pattern.
/// </summary>
public static class MethodChoice
{
    /// <summary>The method for a movement.</summary>
    /// <param name="traits">What it states.</param>
    /// <returns>The method, or null when none of ours fits the pattern.</returns>
    public static MomentMethod? Of(MovementTraits traits) =>
        ArmJoints.Has(traits.WorkingJoint) ? OfArm(traits) : LegJoints.Has(traits.WorkingJoint) ? OfLeg(traits) : null;

    private static MomentMethod OfArm(MovementTraits traits)
    {
        var isOutOfPlane = traits.WorkingJoint is JointMotion.ShoulderAbduction or JointMotion.ShoulderHorizontalAdduction;
        return isOutOfPlane && traits.Moving.Contains(JointMotion.ElbowFlexion) ? MomentMethod.InLine : MomentMethod.OpenArm;
    }

    private static MomentMethod? OfLeg(MovementTraits traits) => traits switch
    {
        { KineticChain: "open" } => MomentMethod.OpenLeg,
        { WorkingJoint: JointMotion.AnkleDorsiflexion } => MomentMethod.CalfLever,
        { ResistanceType: "sled" } => MomentMethod.Sled,
        { MovementPattern: "squat" or "lunge step" } => MomentMethod.FootReaction,
        { MovementPattern: "hip hinge" or "hip extension" } => MomentMethod.TrunkOverHips,
        { MovementPattern: "hip thrust bridge" } => MomentMethod.Bridge,
        { MovementPattern: "knee flexion", BodyPosition: "supine" } => MomentMethod.Bridge,
        { MovementPattern: "knee flexion" or "knee extension" } => MomentMethod.BodyOverKnees,
        _ => null,
    };
}
