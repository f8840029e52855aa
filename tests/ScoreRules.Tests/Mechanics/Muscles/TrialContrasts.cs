using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Loads;
using ScoreRules.Tests.Mechanics.Statics;
using static ScoreRules.Mechanics.Bodies.JointMotion;

namespace ScoreRules.Tests.Mechanics.Muscles;

/// <summary>
/// The rows of model-vs-trials.csv as postures and loads, in the order of the file. Where the file does not say how the load runs, the
/// plainest reading is taken and named here: even for machines, the sine of the angle from the vertical for weights.
/// </summary>
internal static class TrialContrasts
{
    private static readonly Vector3 PreacherPulley = new(0.60, -0.60, 0);

    /// <summary>Both sides of each row, and what the trial found: 1 more for A, -1 more for B, 0 no difference, none where the row is judged with another.</summary>
    public static IReadOnlyList<(Sweep A, Sweep B, int? Trial)> All { get; } =
    [
        (new("triceps long", ElbowFlexion, 0, 90, (ShoulderFlexion, 150)), new("triceps long", ElbowFlexion, 0, 90), 1),
        Same(new("triceps lateral", ElbowFlexion, 0, 90), 1),
        LegCurl("bflh", 1), LegCurl("semiten", 1), LegCurl("semimem", 1),
        Same(new("bfsh", KneeFlexion, 0, 90), 0),
        CalfRaise("gasmed"), CalfRaise("gaslat"),
        Same(new("soleus", AnkleDorsiflexion, -30, 15), 0),
        (new("gasmed", AnkleDorsiflexion, 0, 20), new("gasmed", AnkleDorsiflexion, -25, 0), 1),
        InclineAgainstPreacher("biceps long", 1), InclineAgainstPreacher("biceps short", null), InclineAgainstPreacher("brachialis", -1),
        (new("recfem", KneeFlexion, 0, 100, (HipFlexion, 40)), new("recfem", KneeFlexion, 0, 100, (HipFlexion, 90)), 1),
        Same(new("vaslat", KneeFlexion, 0, 100), 0),
        (new("vaslat", KneeFlexion, 65, 100), new("vaslat", KneeFlexion, 30, 65), 1),
        Deep("glmax2", HipFlexion, 115, 75, Sine, 1), Deep("addmagIsch", HipFlexion, 115, 75, Sine, 1), Deep("vaslat", KneeFlexion, 130, 90, HalfSine, 0),
        (new("bflh", HipFlexion, 0, 90), new("bflh", KneeFlexion, 0, 90) { Load = Cosine }, 1),
        (new("bflh", KneeFlexion, 0, 90, (HipFlexion, 90)), new("bflh", KneeFlexion, 0, 90) { Load = Cosine }, 1),
        (Raise(new Resistance.Cable(60, new Vector3(0, -0.6576, -0.60))), Raise(new Resistance.Weight(8)), 0),
        (Preacher(new Resistance.Weight(10)), Preacher(new Resistance.Cable(100, PreacherPulley)), 0),
    ];

    private static double Sine(double degrees) => Math.Sin(degrees * Math.PI / 180);

    private static double HalfSine(double degrees) => Sine(degrees / 2);

    private static double Cosine(double degrees) => Sine(90 - degrees);

    private static (Sweep A, Sweep B, int? Trial) Same(Sweep sweep, int trial) => (sweep, sweep, trial);

    private static (Sweep A, Sweep B, int? Trial) LegCurl(string part, int trial) =>
        (new(part, KneeFlexion, 0, 90, (HipFlexion, 90)), new(part, KneeFlexion, 0, 90), trial);

    private static (Sweep A, Sweep B, int? Trial) CalfRaise(string part) =>
        (new(part, AnkleDorsiflexion, -30, 15), new(part, AnkleDorsiflexion, -30, 15, (KneeFlexion, 90)), 1);

    private static (Sweep A, Sweep B, int? Trial) InclineAgainstPreacher(string part, int? trial) => (
        new(part, ElbowFlexion, 0, 130, (ShoulderFlexion, -45)) { Load = Sine },
        new(part, ElbowFlexion, 0, 130, (ShoulderFlexion, 55)) { Load = elbow => Sine(elbow + 55) },
        trial);

    private static (Sweep A, Sweep B, int? Trial) Deep(string part, JointMotion motion, double deep, double half, Func<double, double> load, int trial) =>
        (new(part, motion, 0, deep) { Load = load }, new(part, motion, 0, half) { Load = load }, trial);

    private static Sweep Raise(Resistance resistance)
    {
        var curve = Lifts.LateralRaise(resistance).CurveOf();
        return new("deltoid middle", ShoulderAbduction, 0, 90) { Load = angle => curve.OfLoadAlone().At(angle).Moment };
    }

    private static Sweep Preacher(Resistance resistance)
    {
        var curve = Lifts.Curl(resistance, 55).CurveOf();
        return new("biceps long", ElbowFlexion, 0, 130, (ShoulderFlexion, 55)) { Load = angle => curve.OfLoadAlone().At(angle).Moment };
    }
}
