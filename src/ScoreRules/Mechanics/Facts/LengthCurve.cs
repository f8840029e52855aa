using System.Collections.Immutable;
using ScoreRules.Mechanics.Facts.Workings;
using ScoreRules.Mechanics.Muscles;
using ScoreRules.Mechanics.Statics;

namespace ScoreRules.Mechanics.Facts;

/// <summary>How long one muscle of a target is over the lifting phase.</summary>
/// <param name="Muscle">Its name.</param>
/// <param name="Share">Its share of the target's muscles that cross the working joint, 0 to 1.</param>
/// <param name="Lengths">Practical length, 0 to 1, at the same 61 steps as the moment curve.</param>
/// <param name="IsLongAtStart">Whether its long third is the first; also when its length does not change.</param>
public sealed record LengthCurve(string Muscle, double Share, ImmutableArray<double> Lengths, bool IsLongAtStart)
{
    /// <summary>The curves of a target's muscles, in the order of the target.</summary>
    /// <param name="mechanism">The movement.</param>
    /// <param name="target">The muscles that cross the working joint.</param>
    public static ImmutableArray<LengthCurve> Of(Mechanism mechanism, MuscleTarget target)
    {
        var sweep = LengthSweep.Of(mechanism, target);
        return [.. sweep.Muscles.Select((muscle, index) => new LengthCurve(target.Muscles[index].Name, target.Shares[index], [.. muscle.Lengths], muscle.IsLongAtStart))];
    }
}
