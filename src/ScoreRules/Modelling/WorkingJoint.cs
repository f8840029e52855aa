using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics;

namespace ScoreRules.Modelling;

/// <summary>The joint a target works at in a movement.</summary>
/// <param name="Motion">The motion that moves.</param>
/// <param name="Side">Which way the target's muscles turn it.</param>
internal sealed record WorkingJoint(JointMotion Motion, TargetSide Side)
{
    /// <summary>
    /// Of the motions that move, the one that most of the target (by share) turns in the direction of the lifting phase; of equals
    /// the first stated. When none goes the target's way, one that most of it turns at all, so that the checks can say so.
    /// </summary>
    /// <returns>Null when no muscle of the target turns a joint that moves.</returns>
    public static WorkingJoint? Of(TargetDefinition target, ImmutableArray<GeometryLine.Angle> moving)
    {
        var candidates = moving.SelectMany(angle => Sides(target, angle)).Where(candidate => candidate.Share > 0).ToList();
        return candidates.Count == 0 ? null
            : candidates.OrderByDescending(candidate => candidate.IsAlong).ThenByDescending(candidate => candidate.Share).Select(candidate => candidate.Joint).First();
    }

    private static IEnumerable<(WorkingJoint Joint, double Share, bool IsAlong)> Sides(TargetDefinition target, GeometryLine.Angle angle)
    {
        var motion = Motions.Of(angle.Name);
        foreach (var (side, sense) in new[] { (TargetSide.Raises, 1), (TargetSide.Lowers, -1) })
        {
            var share = target.Muscles.Where(muscle => MuscleActions.Of(muscle.Muscle).Contains((motion, sense))).Sum(muscle => muscle.Share);
            yield return (new WorkingJoint(motion, side), share, Math.Sign(angle.End - angle.Start) == sense);
        }
    }
}
