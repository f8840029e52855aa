using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Loads;
using ScoreRules.Modelling;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Modelling;

/// <summary>From rule text to the mechanism: units, sharing, inheritance, whose body.</summary>
public sealed class MechanismBuilderTests
{
    private const string House = """
        ruleset Small
          version 1
          person 60 kg, 1.65 m, female

        attribute movement pattern
          one of elbow flexion, squat

        attribute kinetic chain
          one of open, closed

        attribute laterality
          one of bilateral, independent, unilateral

        attribute resistance type
          one of free weight, cable, elastic, cam machine

        attribute line of pull
          one of gravity, to pulley, to anchor, perpendicular to lever

        attribute load point
          one of one hand, shoulders

        muscle biceps brachii long head

        muscle triceps lateral head

        target elbow flexors
          made of biceps brachii long head 100 parts
          benchmark bar curl

        target elbow extensors
          made of triceps lateral head 100 parts
          benchmark bar curl

        movement bar curl
          trains elbow flexors
          movement pattern is elbow flexion, kinetic chain is open, laterality is bilateral
          resistance type is free weight, line of pull is gravity, load point is one hand
          keeps trunk recline 10°, shoulder extension 10°
          moves elbow flexion 5° to 135°
          external load 20 kg
        """;

    [Fact]
    public void Opposite_motions_are_negative_and_the_person_is_the_house_s()
    {
        var curl = Mechanism("");
        curl.Start[JointMotion.TrunkPitch].ShouldBe(-10);
        curl.End[JointMotion.ShoulderFlexion].ShouldBe(-10);
        curl.Person.ShouldBe(new Person(60, 1.65, Sex.Female));
    }

    // One bar of 20 kg in two hands: each arm has 10 kg, as with a load of 10 kg each.
    [Fact]
    public void Both_sides_share_one_load()
    {
        var bar = StaticSolver.Solve(Mechanism("")).Curve!;
        var each = StaticSolver.Solve(Mechanism("  but laterality is independent\n  but external load 10 kg\n")).Curve!;
        each.Points.ShouldBe(bar.Points);
    }

    [Fact]
    public void A_cable_may_be_told_in_kilograms_or_newtons()
    {
        const string Cable = "  but resistance type is cable, line of pull is to pulley\n  pulley 40 cm forward, 1 m down, 10 cm in\n";
        var newtons = (Resistance.Cable)Mechanism(Cable + "  but external load 98.1 N\n").Resistance;
        newtons.Pulley.ShouldBe(new Vector3(0.4, -1, -0.1));
        newtons.Newtons!.Value.ShouldBe(98.1, 1e-9);
        ((Resistance.Cable)Mechanism(Cable + "  but external load 10 kg\n").Resistance).Newtons!.Value.ShouldBe(98.1, 1e-9);
    }

    // 20 N at 1.0 m and 60 N at 1.4 m: 100 N/m, slack at 0.8 m.
    [Fact]
    public void Two_measured_pulls_of_a_band_give_stiffness_and_slack_length()
    {
        const string Band = "  but resistance type is elastic, line of pull is to anchor\n  pulley 1.1 m down\n";
        var law = ((Resistance.Band)Mechanism(Band + "  band 20 N at 1 m, 60 N at 140 cm\n").Resistance).Law.ShouldBeOfType<BandLaw.Linear>();
        law.NewtonsPerMetre.ShouldBe(100, 1e-9);
        law.SlackMetres.ShouldBe(0.8, 1e-9);
        ((Resistance.Band)Mechanism(Band + "  band 0 N at 60 cm, 20 N at 1 m, 60 N at 2 m\n").Resistance).Law.ShouldBeOfType<BandLaw.Table>();
    }

    // 20 kg at a radius of 0.1 m for two arms: 20 x 9.81 x 0.1 / 2 = 9.81 N m each, the weight of the forearm apart.
    [Fact]
    public void A_measured_cam_gives_a_curve()
    {
        var mechanism = Mechanism("  but resistance type is cam machine, line of pull is perpendicular to lever\n  cam radius 10 cm at 0°, 10 cm at 140°\n");
        StaticSolver.Solve(mechanism).Curve!.Points.ShouldAllBe(point => Math.Abs(point.Load - 9.81) < 1e-9);
    }

    [Fact]
    public void A_target_that_turns_the_joint_the_other_way_is_told_so()
    {
        var model = Model("  trains elbow extensors\n", "elbow extensors", out var findings);
        model.Mechanism!.Target.ShouldBe(TargetSide.Lowers);
        findings.ShouldContain("the target's muscles turn the joint the other way");
    }

    [Fact]
    public void A_joint_that_the_target_does_not_turn_is_passed_over() =>
        Model("  moves wrist extension 0° to 20°\n", "elbow flexors", out _).Mechanism!.WorkingJoint.ShouldBe(JointMotion.ElbowFlexion);

    [Fact]
    public void What_a_movement_would_have_to_state_is_named()
    {
        var judgement = Judged.Text(House + "\nmovement roll-up\n  trains elbow flexors\n  moves wrist extension -40° to 40°\n");
        var model = MovementModels.Of(judgement.Ruleset, judgement.Catalogue).Single(model => model.Movement.Name == "roll-up");
        model.Mechanism.ShouldBeNull();
        model.Lacks.ShouldBe(["a joint that moves and that the muscles of \"elbow flexors\" turn", "resistance type and line of pull", "load point"]);
    }

    private static Mechanism Mechanism(string lines) => Model(lines, "elbow flexors", out _).Mechanism.ShouldNotBeNull();

    private static MovementModel Model(string lines, string target, out string findings)
    {
        var text = $"{House}\nmovement other curl\n  like bar curl\n{lines}";
        var judgement = Judged.Text(text);
        findings = string.Join('\n', judgement.Findings.Select(finding => finding.Headline));
        return MovementModels.Of(judgement.Ruleset, judgement.Catalogue).Single(model => model.Movement.Name == "other curl" && model.Target.Name == target);
    }
}
