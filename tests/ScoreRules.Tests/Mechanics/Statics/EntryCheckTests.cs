using System.Collections.Immutable;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Checks;
using ScoreRules.Mechanics.Statics.Loads;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Statics;

/// <summary>Input that cannot be, or is doubtful, gets a sentence that says what and a way out.</summary>
public sealed class EntryCheckTests
{
    private static readonly Mechanism Curl = Lifts.Curl(new Resistance.Weight(10), 0);

    public static TheoryData<string, string> RefusedCases() => new()
    {
        { "mass", "The body mass is -80 kg; it must be from 1 to 500 kg." },
        { "nan mass", "The body mass is not a number; it must be from 1 to 500 kg." },
        { "stature in cm", "The stature is 180 m; it must be from 0.5 to 2.6 m." },
        { "negative load", "The load is -5 kg; it must be from 0 to 2000 kg." },
        { "nan angle", "The elbow flexion is not a number; it must be from -360 to 360 °." },
        { "joint missing", "The working joint does not move: no range of shoulder flexion is stated." },
        { "range zero", "The range of elbow flexion is zero: it begins and ends at 40°." },
        { "range reversed", "The range of elbow flexion runs from 130° to 0°, but the target's muscles turn the joint the other way." },
        { "elbow limit", "No joint does elbow flexion 170°: the widest value is 158° (goniometry textbook table A.1 (AAOS, AMA and study means))." },
        { "pulley on joint", "The pulley sits on the joint it is measured from." },
        { "pulley in path", "The hand or foot runs into the pulley." },
        { "band slack", "The band never pulls: it is at most 1.1 m long." },
        { "band table short", "The band's table ends at 1 m, but the band is stretched to 1.1 m." },
        { "band table falls", "The table of the band does not rise in its first number." },
        { "cam too short", "The cam's table runs from 0° to 90° and does not cover the movement." },
        { "sled in hand", "A sled is not modelled for this kind of movement." },
        { "no load at all", "Nothing loads the working joint: the moment is 0 at every angle." },
        { "hamstrings", "The hamstrings do not allow hip flexion 115° with knee flexion 5°: about 105° is the most (from memory)." },
        { "ankle straight", "No joint does ankle dorsiflexion 35°: the widest value is 30° (loaded with a straight knee, from memory)." },
        { "foot out of reach", "The foot cannot be 1.4 m from the height of the shoulders: they are only 0.88 m apart in this posture." },
    };

    [Theory]
    [MemberData(nameof(RefusedCases))]
    public void What_cannot_be_is_refused(string name, string headline)
    {
        var profile = StaticSolver.Solve(Case(name));
        profile.Curve.ShouldBeNull();
        var finding = profile.Findings.First(finding => finding.Severity == FindingSeverity.Refused);
        finding.Headline.ShouldBe(headline);
        finding.Advice.ShouldNotBeEmpty();
    }

    public static TheoryData<string, string> DoubtfulCases() => new()
    {
        { "hip 130", "Few people reach hip flexion 130°: usual is 120°, the widest value 135° (medical manual table (opened), AAOS from memory)." },
        { "hanging", "A free weight hangs straight down, but the upper arm begins 20° from vertical in the room." },
        { "behind the body", "A free weight hangs straight down, but the upper arm begins -30° from vertical in the room." },
        { "chain", "On flat feet the trunk pitch at the start must be 35°, but 10° is stated." },
        { "falls back", "At the start the body would fall backward: its weight lies 0.34 m behind the ankle, off the foot." },
        { "foot path", "The ankle leaves a track of 10° by 37.72° between start and end." },
        { "pulley near", "The pulley is 0.25 m from the joint, inside the reach of 0.32 m." },
        { "start helps", "At the start the load helps instead of opposing: -16.5 N m at 5°." },
    };

    // The numbers in these sentences were worked out by hand from the segment lengths.
    [Theory]
    [MemberData(nameof(DoubtfulCases))]
    public void What_is_doubtful_is_said_and_the_curve_stands(string name, string headline)
    {
        var profile = StaticSolver.Solve(Case(name));
        profile.Curve.ShouldNotBeNull();
        profile.Findings.ShouldAllBe(finding => finding.Severity == FindingSeverity.Warning);
        profile.Findings.Select(finding => finding.Headline).ShouldContain(headline);
    }

    [Fact]
    public void A_plain_curl_meets_no_objection() => StaticSolver.Solve(Curl).Findings.ShouldBeEmpty();

    [Fact]
    public void A_cable_without_a_pulley_says_what_the_pulley_would_give()
    {
        var profile = StaticSolver.Solve(Lifts.Curl(new Resistance.Cable(100, null), 0));
        profile.Curve.ShouldBeNull();
        profile.Missing.Single(input => input.StopsTheCurve).ShouldBe(new MissingInput("pulley position", "A pulley position would make the load profile computable.", StopsTheCurve: true));
    }

    [Fact]
    public void Each_number_names_its_origin()
    {
        var profile = StaticSolver.Solve(Lifts.Curl(new Resistance.Band(null, new Vector3(0.05, -1.05, 0)), 0));
        profile.Inputs.Where(input => input.Origin == InputOrigin.Assumed).Select(input => input.Name).ShouldBe(["body mass", "stature", "band stiffness", "band slack length"]);
        profile.Inputs.Single(input => input.Name == "end of the range").ShouldBe(new InputUse("end of the range", 130, "°", InputOrigin.Stated));
        profile.Missing.Select(input => input.Name).ShouldBe(["band stiffness", "band slack length"]);
    }

    // 35 - 110 + 100 = 25 and 0: with the ankle left out it follows from the other three.
    [Fact]
    public void Of_four_joints_of_a_standing_body_the_fourth_follows()
    {
        var whole = WithPitch(Lifts.Squat(35, 110, 100, 80), 25);
        var open = whole with
        {
            Start = new Posture(whole.Start.Degrees.Remove(JointMotion.AnkleDorsiflexion)),
            End = new Posture(whole.End.Degrees.Remove(JointMotion.AnkleDorsiflexion).SetItem(JointMotion.TrunkPitch, 0)),
        };
        var profile = StaticSolver.Solve(open);
        profile.Curve.ShouldNotBeNull().Points.ShouldBe(StaticSolver.Solve(whole).Curve!.Points);
        profile.Inputs.ShouldContain(new InputUse("ankle dorsiflexion at the start, from the other three", 35, "°", InputOrigin.Derived));
    }

    [Fact]
    public void Two_open_joints_of_a_standing_body_are_named()
    {
        var squat = Lifts.Squat(35, 110, 100, 80);
        var profile = StaticSolver.Solve(squat with { Start = new Posture(squat.Start.Degrees.Remove(JointMotion.AnkleDorsiflexion).Remove(JointMotion.HipFlexion)) });
        profile.Curve.ShouldBeNull();
        profile.Missing.Single().Name.ShouldBe("hip flexion and ankle dorsiflexion at the start");
    }

    private static Mechanism Case(string name) => name switch
    {
        "mass" => Curl with { Person = new Person(-80, 1.8, Sex.Male) },
        "nan mass" => Curl with { Person = new Person(double.NaN, 1.8, Sex.Male) },
        "stature in cm" => Curl with { Person = new Person(80, 180, Sex.Male) },
        "negative load" => Curl with { Resistance = new Resistance.Weight(-5) },
        "nan angle" => Lifts.Curl(new Resistance.Weight(10), 0, double.NaN),
        "joint missing" => Curl with { WorkingJoint = JointMotion.ShoulderFlexion },
        "range zero" => Lifts.Curl(new Resistance.Weight(10), 0, 40, 40) with { Moving = [JointMotion.ElbowFlexion] },
        "range reversed" => Lifts.Curl(new Resistance.Weight(10), 0, 130, 0) with { Target = TargetSide.Raises },
        "elbow limit" => Lifts.Curl(new Resistance.Weight(10), 0, 0, 170),
        "pulley on joint" => Lifts.Curl(new Resistance.Cable(100, Vector3.Zero), 0),
        "pulley in path" => Lifts.Curl(new Resistance.Cable(100, new Vector3(0, -0.3228, 0)), 0),
        "pulley near" => Lifts.Curl(new Resistance.Cable(100, new Vector3(0, -0.25, 0)), 0),
        "band slack" => Lifts.Curl(new Resistance.Band(new BandLaw.Linear(100, 2), new Vector3(0, -1.0, 0)), 0, 0, 100),
        "band table short" => Lifts.Curl(new Resistance.Band(new BandLaw.Table(Table((0.5, 0), (1, 80))), new Vector3(0, -1.0, 0)), 0, 0, 100),
        "band table falls" => Lifts.Curl(new Resistance.Band(new BandLaw.Table(Table((1, 0), (0.5, 80))), new Vector3(0, -1.0, 0)), 0),
        "cam too short" => Lifts.Curl(new Resistance.Cam(40, Table((0, 0.1), (90, 0.1))), 0),
        "sled in hand" => Lifts.Curl(new Resistance.Sled(40, 45), 0),
        "no load at all" => Lifts.Calf(BallOfFoot.Default) with { LoadPoint = LoadPoint.Thigh },
        "hamstrings" => Hinge(115, 5),
        "ankle straight" => Lifts.Calf(BallOfFoot.Default, 35),
        "foot out of reach" => Lifts.Thrust(100) with { FootSupportMetres = 1.4 },
        "hip 130" => Lifts.Squat(35, 125, 130, 80) with { IsHeldUpright = true },
        "hanging" => Lifts.Curl(new Resistance.Weight(10), 20),
        "behind the body" => Lifts.Curl(new Resistance.Weight(10), -30),
        "chain" => WithPitch(Lifts.Squat(30, 90, 95, 80), 10),
        "falls back" => Lifts.Squat(0, 90, 90, 0),
        "foot path" => Lifts.Lift(
            MomentMethod.Sled, JointMotion.KneeFlexion, new Resistance.Sled(100, 10), LoadPoint.Foot,
            Lifts.Posture((JointMotion.TrunkPitch, -60), (JointMotion.HipFlexion, 130), (JointMotion.KneeFlexion, 105)),
            Lifts.Posture((JointMotion.TrunkPitch, -60), (JointMotion.HipFlexion, 80), (JointMotion.KneeFlexion, 5))),
        _ => Lifts.Curl(new Resistance.Cable(100, new Vector3(0.6, -1.1, 0)), 0, 5),
    };

    private static Mechanism WithPitch(Mechanism squat, double pitch) => squat with { Start = squat.Start.With(JointMotion.TrunkPitch, pitch) };

    private static Mechanism Hinge(double hip, double knee) => Lifts.Lift(
        MomentMethod.TrunkOverHips, JointMotion.HipFlexion, new Resistance.Weight(60), LoadPoint.Hand,
        Lifts.Posture((JointMotion.HipFlexion, hip), (JointMotion.KneeFlexion, knee), (JointMotion.TrunkPitch, hip)),
        Lifts.Posture((JointMotion.HipFlexion, 0), (JointMotion.KneeFlexion, knee), (JointMotion.TrunkPitch, 0)));

    private static PiecewiseLinear Table(params ImmutableArray<(double, double)> points) => new(points);
}
