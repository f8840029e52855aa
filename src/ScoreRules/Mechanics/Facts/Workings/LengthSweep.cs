using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Muscles;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Curves;

namespace ScoreRules.Mechanics.Facts.Workings;

/// <summary>The muscles of a target over the steps of a movement.</summary>
internal sealed class LengthSweep
{
    private LengthSweep(MuscleTarget target, MuscleSweep[] muscles, Excess worst, double offSagittal)
    {
        (Target, Muscles, Worst, OffSagittal) = (target, muscles, worst, offSagittal);
    }

    public MuscleTarget Target { get; }

    public MuscleSweep[] Muscles { get; }

    public Excess Worst { get; }

    public double OffSagittal { get; }

    public static LengthSweep Of(Mechanism mechanism, MuscleTarget target)
    {
        var steps = Steps(mechanism);
        var (worst, offSagittal) = (default(Excess), 0.0);
        var muscles = new MuscleSweep[target.Muscles.Length];
        for (var i = 0; i < muscles.Length; i++)
        {
            muscles[i] = Of(target.Muscles[i], steps, ref worst, ref offSagittal);
        }

        return new LengthSweep(target, muscles, worst, offSagittal);
    }

    private static JointCoordinates[] Steps(Mechanism mechanism)
    {
        var (start, end) = (JointAngles.Of(mechanism.Start), JointAngles.Of(mechanism.End));
        var steps = new JointCoordinates[MomentCurve.Steps];
        for (var i = 0; i < steps.Length; i++)
        {
            steps[i] = JointCoordinates.Of(JointAngles.Between(start, end, (double)i / (steps.Length - 1)));
        }

        return steps;
    }

    private static MuscleSweep Of(Muscle muscle, JointCoordinates[] steps, ref Excess worst, ref double offSagittal)
    {
        // Ends are told apart by anatomical length, because the practical one is held at 0 and 1.
        var (practical, atStart, atEnd, third) = (new double[steps.Length], 0.0, 0.0, (steps.Length - 1) / 3);
        for (var i = 0; i < steps.Length; i++)
        {
            var length = muscle.LengthAt(steps[i]);
            practical[i] = length.Practical;
            atStart += i <= third ? length.Anatomical : 0;
            atEnd += i >= steps.Length - 1 - third ? length.Anatomical : 0;
            worst = Excess.Worse(worst, length.Worst);
            offSagittal = Math.Max(offSagittal, length.OffSagittalDegrees);
        }

        return new MuscleSweep(practical, atStart >= atEnd - 1e-9);
    }
}
