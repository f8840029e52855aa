using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Facts;
using ScoreRules.Mechanics.Muscles;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Loads;
using ScoreRules.Mechanics.Statics.Strains;
using ScoreRules.Tests.Mechanics.Statics;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Facts;

/// <summary>What facts say of plain lifts, what they lack, and how far they move.</summary>
public sealed class MovementFactsTests
{
    private static readonly MovementFacts Curl = MovementFacts.Of(Lifts.Curl(new Resistance.Weight(10), 0), Targets.ElbowFlexors);

    [Fact]
    public void A_curl_is_hardest_at_90_degrees_with_the_pinned_moment()
    {
        // W-C90 of the reference: 34.8 N m.
        Curl["peak moment"].Value!.Value.ShouldBe(34.8, 0.18);
        Curl["angle of peak moment"].Value!.Value.ShouldBe(90, 0.5);

        // W-PR-standing_and_incline_bench-share: 0.166.
        Curl["share of load in the lengthened third"].Value!.Value.ShouldBe(0.166, 0.002);
        Curl["load at the longest point"].Value!.Value.ShouldBe(0, 1e-9);
        Curl["part of the range where the load helps"].Value.ShouldBe(0);
    }

    // Sine over 130 degrees: mean = (1 - cos 130) / (130 in radians), by hand 0.7240.
    [Fact]
    public void Evenness_is_mean_by_peak() => Curl["evenness of load"].Value!.Value.ShouldBe(0.7240, 0.0005);

    [Fact]
    public void Each_value_lies_in_its_interval_and_the_load_hardly_changes_a_shape()
    {
        foreach (var value in Curl.Values.Where(value => value.Value is not null))
        {
            value.Interval!.Value.Low.ShouldBeLessThanOrEqualTo(value.Value!.Value, value.Fact.Name);
            value.Interval.Value.High.ShouldBeGreaterThanOrEqualTo(value.Value.Value, value.Fact.Name);
        }

        // Half and double the load: W r + A with W 5 and 20 kg; worked by hand from 0.3228 m and 3.123 N m.
        Curl["peak moment"].Interval!.Value.High.ShouldBe((20 * 9.81 * 0.3228) + 3.123, 0.5);
        (Curl["mean length"].Interval!.Value.High - Curl["mean length"].Interval!.Value.Low).ShouldBeInRange(0.01, 0.2);
        Curl.Variations.ShouldBe((2 * 3) + 2 + 2);
        Curl.FailedVariations.ShouldBe(0);
    }

    [Fact]
    public void A_machine_without_a_cam_has_lengths_only_and_names_what_it_lacks()
    {
        var facts = MovementFacts.Of(Machine(), Targets.Hamstrings);
        facts["mean length"].Value.ShouldNotBeNull();
        foreach (var name in new[] { "peak moment", "loaded length in the long third", "load profile", "evenness of load" })
        {
            facts[name].Value.ShouldBeNull(name);
            facts[name].Interval.ShouldBeNull(name);
            facts[name].Missing.Single().ShouldStartWith("The cam radius by angle is not stated.");
        }
    }

    [Fact]
    public void An_even_load_counts_only_where_it_is_accepted_and_says_that_it_is_assumed()
    {
        var facts = MovementFacts.Of(Machine(), Targets.Hamstrings, new FactOptions { AcceptsEvenLoad = true });
        facts["load profile"].Value.ShouldBe(1);
        facts["load profile"].IsAssumed.ShouldBeTrue();
        facts["moment-weighted length"].Value!.Value.ShouldBe(facts["mean length"].Value!.Value, 1e-12);
        facts["mean length"].IsAssumed.ShouldBeFalse();
        facts["peak moment"].Value.ShouldBeNull();
        facts["peak moment"].IsAssumed.ShouldBeFalse();
    }

    [Fact]
    public void A_cable_without_a_pulley_is_not_taken_as_even()
    {
        var cable = Lifts.Curl(new Resistance.Cable(null, null), 0);
        var facts = MovementFacts.Of(cable, Targets.ElbowFlexors, new FactOptions { AcceptsEvenLoad = true });
        facts["load profile"].Value.ShouldBeNull();
        facts["load profile"].Missing.Single().ShouldStartWith("The pulley position is not stated.");
    }

    [Fact]
    public void A_muscle_that_does_not_cross_the_working_joint_is_left_out_and_named()
    {
        var facts = MovementFacts.Of(Lifts.Hinge(new Resistance.Weight(40), LoadPoint.Shoulders), Targets.Hamstrings);
        facts.LeftOut.ShouldBe(["biceps femoris short head"]);
        facts.Target.CoveredShare.ShouldBe(0.86, 1e-12);
        facts["mean length"].Grade.ShouldBe(Reliability.Agreed);
        var none = MovementFacts.Of(Lifts.Hinge(new Resistance.Weight(40), LoadPoint.Shoulders), Targets.Soleus);
        none["mean length"].Missing.ShouldBe(["None of the target's muscles crosses the working joint (hip flexion)."]);
        none["peak moment"].Value.ShouldNotBeNull();
    }

    [Fact]
    public void The_worst_grade_is_carried_and_a_sign_alone_orders_nothing()
    {
        var facts = MovementFacts.Of(Lifts.LateralRaise(new Resistance.Weight(8)), Targets.Of(("deltoid acromial", 1), ("trapezius transverse", 1)), new FactOptions { WithIntervals = false });
        facts["mean length"].Grade.ShouldBe(Reliability.SignOnly);
        facts["mean length"].CanOrder.ShouldBeFalse();
        facts["peak moment"].Grade.ShouldBeNull();
        facts["peak moment"].CanOrder.ShouldBeTrue();
        facts["mean length"].Interval.ShouldBeNull();
    }

    [Fact]
    public void A_fact_says_what_made_it()
    {
        Curl["mean length"].Inputs.Single(input => input.Name == "elbow flexion at the end").ShouldBe(new InputUse("elbow flexion at the end", 130, "°", InputOrigin.Stated));
        Curl["mean length"].Inputs.ShouldNotContain(input => input.Name == "load");
        Curl["loaded length in the long third"].Inputs.ShouldContain(input => input.Name == "load");
        Curl["working sides"].Missing.ShouldBe(["How the body is held and how many sides work is not stated."]);
    }

    [Fact]
    public void Supports_are_passed_on()
    {
        var facts = MovementFacts.Of(Lifts.Curl(new Resistance.Weight(10), 0), Targets.ElbowFlexors, new FactOptions { Support = BodySupport.Of(["feet", "back", "feet"], "unilateral") });
        facts["working sides"].Value.ShouldBe(1);
        facts["support points"].Value.ShouldBe(2);
    }

    [Fact]
    public void Nonsense_is_refused_with_a_reason_and_never_throws()
    {
        var facts = MovementFacts.Of(Lifts.Curl(new Resistance.Weight(double.NaN), 0), Targets.ElbowFlexors);
        facts["peak moment"].Value.ShouldBeNull();
        facts["peak moment"].Missing.ShouldNotBeEmpty();
        facts["mean length"].Value.ShouldNotBeNull();
    }

    [Fact]
    public void An_unknown_name_is_an_error_of_the_caller() => Should.Throw<KeyNotFoundException>(() => Curl["mean lenght"]).Message.ShouldBe("There is no fact \"mean lenght\".");

    private static Mechanism Machine() => Lifts.Lift(
        MomentMethod.OpenLeg, JointMotion.KneeFlexion, new Resistance.Cam(null, null), LoadPoint.Shin,
        Lifts.Posture((JointMotion.HipFlexion, 90), (JointMotion.KneeFlexion, 5)), Lifts.Posture((JointMotion.HipFlexion, 90), (JointMotion.KneeFlexion, 110)));
}
