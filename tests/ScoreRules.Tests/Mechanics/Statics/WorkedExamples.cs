using System.Globalization;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Curves;
using ScoreRules.Mechanics.Statics.Loads;

namespace ScoreRules.Tests.Mechanics.Statics;

/// <summary>The case of each row of statics-worked-examples.csv in our terms: what the library says for it.</summary>
internal static class WorkedExamples
{
    /// <summary>Enough steps that straight lines between them are as good as an integral.</summary>
    private const int Fine = 7801;

    private static readonly BodyDimensions Body = new(Person.Default);

    private static readonly double Reach = Body.Forearm.Metres + ArmPose.GripMetres;

    /// <summary>What the library gives for a row, or null when no case here covers it.</summary>
    public static double? Of(string id)
    {
        var (family, rest) = id.IndexOf('-', StringComparison.Ordinal) is > 0 and var dash ? (id[..dash], id[(dash + 1)..]) : Split(id);
        return family switch
        {
            "A" => rest == "1" ? Reach : Curl10(0).At(90).Limb,
            "C" or "IN" or "AB" or "P" or "TO" or "TL" => Free(family, Angle(rest)),
            "PR" => Profile(rest),
            "K1" or "K2" or "K3" or "K4" or "K5" or "K6" or "K7" => Cable(family, rest),
            "B1" => Band(rest),
            "B1T" => BandTension(Angle(rest)),
            "M1" => Lifts.Curl(CamMachine, 0).CurveOf(131).At(Angle(rest)).Load,
            "LR" or "LC" => LateralRaise(family, rest),
            "PU" => PushUp(rest),
            "SQ20" or "SQ30" or "SQ35" or "SQ40" => Squat(Angle(family[2..]), rest),
            "HG" => Lifts.Hinge(new Resistance.Weight(40), LoadPoint.Shoulders).CurveOf(91).At(Angle(rest)).Moment,
            "BE" => Lifts.Hinge(new Resistance.BodyWeight(0), LoadPoint.Trunk, 45).CurveOf(91).At(Angle(rest)).Moment,
            "HT" => Lifts.Thrust(100).CurveOf(91).At(2 * Angle(rest)).Load,
            "NO" => rest == "share" ? CurveSummary.ShareOf(Lifts.Nordic().CurveOf(Fine), Third.First) : Lifts.Nordic().CurveOf(91).At(90 - Angle(rest)).Moment,
            "CA" => Lifts.Calf(BallOfFoot.Flat).CurveOf(41).At(-Angle(rest)).Moment,
            "PD" => PullDown.CurveOf(121).At(Angle(rest)).Load,
            "BP" => BenchPress.CurveOf(91).At(Angle(rest)).Load,
            _ => null,
        };
    }

    // The letters of a row's name, then its angle: "C30", "AB120", "CA-20".
    private static (string Family, string Tail) Split(string id)
    {
        var letters = id.TakeWhile(char.IsAsciiLetter).Count();
        return (id[..letters], id[letters..]);
    }

    private static double Angle(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static MomentCurve Curl10(double upperArm, double trunkPitch = 0) =>
        Lifts.Curl(new Resistance.Weight(10), upperArm, trunkPitch: trunkPitch).CurveOf(131);

    private static double Free(string family, double phi) => family switch
    {
        "IN" => Curl10(0, trunkPitch: -45).At(phi).Moment,
        "AB" => Curl10(-45).At(phi).Moment,
        "P" => Curl10(55).At(phi).Moment,
        "TO" => Lifts.Curl(new Resistance.Weight(10), 180, 120, 0).CurveOf(121).At(phi).Moment,
        "TL" => Lifts.Curl(new Resistance.Weight(10), 180, 120, 0, trunkPitch: -90).CurveOf(121).At(phi).Moment,
        _ => Curl10(0).At(phi).Moment,
    };

    private static double? Profile(string rest)
    {
        var upperArm = rest.Split('-')[0] switch { "standing_and_incline_bench" => 0, "armback45" => -45, "preacher55" => 55, "preacher45" => 45, _ => 90 };
        return Summary(Lifts.Curl(new Resistance.Weight(10), upperArm).CurveOf(Fine), rest.Split('-')[1]);
    }

    private static double? Summary(MomentCurve curve, string output) => output switch
    {
        "peak" => Peaks.Of(curve).AngleDegrees,
        "share" => CurveSummary.ShareOf(curve, Third.First),
        "start" => CurveSummary.StartToPeak(curve),
        "mean3" => CurveSummary.MeanToPeak(curve, Third.First),
        _ => null,
    };

    private static double? Cable(string family, string rest)
    {
        var (upperArm, pulley) = family switch
        {
            "K1" => (0, new Vector3(0.6, -1.1, 0)),
            "K2" => (0, new Vector3(0, -1.1, 0)),
            "K3" => (-30, new Vector3(-0.6, -1.0, 0)),
            "K4" => (90, new Vector3(1.0, 0, 0)),
            "K5" => (0, new Vector3(-0.5, 0.9, 0)),
            "K6" => (-30, new Vector3(-1.0, -0.28, 0)),
            _ => (55, new Vector3(0.8, -0.6, 0)),
        };
        var curl = Lifts.Curl(new Resistance.Cable(100, pulley), upperArm);
        return Summary(curl.CurveOf(Fine).OfLoadAlone(), rest) ?? curl.CurveOf(131).At(Angle(rest)).Load;
    }

    private static double? Band(string rest)
    {
        var curl = Lifts.Curl(new Resistance.Band(new BandLaw.Linear(100, 0.60), new Vector3(0, -1.10, 0)), 0);
        return Summary(curl.CurveOf(Fine).OfLoadAlone(), rest) ?? curl.CurveOf(131).At(Angle(rest)).Load;
    }

    private static double BandTension(double phi)
    {
        var pose = ArmPose.Of(Body, JointAngles.Of(Lifts.Posture((JointMotion.ElbowFlexion, phi))));
        return new BandLaw.Linear(100, 0.60).Tension((pose.Elbow + new Vector3(0, -1.10, 0) - pose.Grip).Length);
    }

    private static Resistance.Cam CamMachine => new(40, new PiecewiseLinear([(0, 0.12), (130, 0.08)]));

    private static double? LateralRaise(string family, string rest)
    {
        var hand = Body.UpperArm.Metres + Reach;
        var curve = family == "LR"
            ? Lifts.LateralRaise(new Resistance.Weight(8)).CurveOf(91)
            : Lifts.LateralRaise(new Resistance.Cable(60, new Vector3(0, -hand, -0.60))).CurveOf(91).OfLoadAlone();
        return Summary(curve, rest) ?? curve.At(Angle(rest)).Moment;
    }

    private static double? PushUp(string rest) => rest switch
    {
        "1" => BodyLumps.WholeBody(Body).Metres / Person.Default.StatureMetres,
        "2" => PushUpShare.OnFeet(Body),
        "3" => PushUpShare.OnFeet(Body, 0.05 * Person.Default.StatureMetres),
        "4" => PushUpShare.OnKnees(Body),
        _ => null,
    };

    private static double? Squat(double shank, string rest)
    {
        var knee = SquatMoment(shank, JointMotion.KneeFlexion);
        var hip = SquatMoment(shank, JointMotion.HipFlexion);
        var weight = 100 * BodyConstants.Gravity;
        return rest switch
        {
            "hip" => hip / weight,
            "knee" => knee / weight,
            "trunk" => StandingChain.TrunkPitchToCarryOver(Body, hip / weight),
            "M" => hip,
            "MK" => knee,
            _ => null,
        };
    }

    // Thigh level: the knee bends 90 past the shank's lean. The trunk does not matter for what the ground does below the hip.
    private static double SquatMoment(double shank, JointMotion joint) =>
        (Lifts.Squat(shank, 90 + shank, 100, 100) with { WorkingJoint = joint }).CurveOf().Points[0].Load;

    private static Mechanism PullDown => Lifts.Lift(
        MomentMethod.InLine, JointMotion.ShoulderAbduction, new Resistance.BodyWeight(50), LoadPoint.Body,
        Lifts.Posture((JointMotion.ShoulderAbduction, 150)), Lifts.Posture((JointMotion.ShoulderAbduction, 30))) with
    { SharedBy = 2 };

    private static Mechanism BenchPress => Lifts.Lift(
        MomentMethod.InLine, JointMotion.ShoulderHorizontalAdduction, new Resistance.Weight(80), LoadPoint.Hand,
        Lifts.Posture((JointMotion.TrunkPitch, -90), (JointMotion.ShoulderAbduction, 90), (JointMotion.ShoulderHorizontalAdduction, 0)),
        Lifts.Posture((JointMotion.TrunkPitch, -90), (JointMotion.ShoulderAbduction, 90), (JointMotion.ShoulderHorizontalAdduction, 90))) with
    { SharedBy = 2 };
}
