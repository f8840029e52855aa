using System.Collections.Immutable;
using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Muscles;

/// <summary>A muscle as rules name it: the mean of its parts, each with the same weight.</summary>
/// <param name="Name">Name, such as <c>gluteus maximus</c>.</param>
/// <param name="Parts">Its lines of pull, at least one.</param>
/// <param name="PracticalShortest">Anatomical length (0 to 1) at which the practical range begins.</param>
/// <param name="PracticalLongest">Anatomical length at which it ends.</param>
public sealed record Muscle(string Name, ImmutableArray<MusclePart> Parts, double PracticalShortest, double PracticalLongest)
{
    /// <summary>That of its least reliable part.</summary>
    public Reliability Reliability { get; } = Parts.Max(part => part.Reliability);

    /// <summary>Whether its length is known to depend on a motion.</summary>
    /// <param name="motion">The motion.</param>
    public bool Crosses(JointMotion motion) => Parts.Any(part => part.Crosses(motion));

    /// <summary>Length in a posture.</summary>
    public MuscleLength LengthAt(in JointCoordinates at)
    {
        var (sum, offSagittal, worst) = (0.0, 0.0, default(Excess));
        foreach (var part in Parts)
        {
            var length = part.LengthAt(at);
            sum += length.Normalised;
            offSagittal = Math.Max(offSagittal, length.OffSagittalDegrees);
            worst = Excess.Worse(worst, Excess.Worse(length.First, length.Second));
        }

        var mean = sum / Parts.Length;
        return new MuscleLength(mean, Practical(mean), worst, offSagittal);
    }

    /// <summary>Length in a posture; see <see cref="LengthAt(in JointCoordinates)"/>.</summary>
    public MuscleLength LengthAt(Posture posture) => LengthAt(JointCoordinates.Of(posture));

    /// <summary>Mean moment arm of its parts about an anatomical motion, positive when shortening increases that angle.</summary>
    /// <returns>None when a part is not known over that motion; the sign alone when a part is good for no more.</returns>
    public MomentArm? MomentArmAbout(JointMotion motion, Posture posture)
    {
        var angles = JointAngles.Of(posture);
        var arms = Parts.Select(part => part.MomentArmAbout(motion, angles)).ToList();
        if (arms.Contains(null))
        {
            return null;
        }

        var worst = arms.Aggregate(default(Excess), (excess, arm) => Excess.Worse(excess, arm!.Value.Worst));
        return arms.TrueForAll(arm => arm!.Value.Metres is not null)
            ? MomentArm.Of(arms.Average(arm => arm!.Value.Metres!.Value), Reliability, worst)
            : new MomentArm(null, SharedSign(arms), worst);
    }

    // Without sizes there is a sign only where all parts pull the same way.
    private static int SharedSign(List<MomentArm?> arms) => arms.TrueForAll(arm => arm!.Value.Sign == arms[0]!.Value.Sign) ? arms[0]!.Value.Sign : 0;

    private double Practical(double anatomical) => Math.Clamp((anatomical - PracticalShortest) / (PracticalLongest - PracticalShortest), 0, 1);
}
