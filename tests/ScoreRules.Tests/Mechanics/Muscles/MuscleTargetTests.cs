using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Muscles;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Muscles;

/// <summary>Parts taken together as a muscle, muscles taken together as a target.</summary>
public sealed class MuscleTargetTests
{
    private static readonly Posture Seated = ModelPart.Posture((JointMotion.HipFlexion, 90), (JointMotion.KneeFlexion, 10));

    [Fact]
    public void A_muscle_is_the_plain_mean_of_its_parts()
    {
        var muscle = MuscleModel.FindMuscle("gluteus maximus")!;
        muscle.Parts.Length.ShouldBe(3);
        muscle.LengthAt(Seated).Anatomical.ShouldBe(muscle.Parts.Average(part => part.LengthAt(Seated).Normalised), 1e-12);
        muscle.LengthAt(Seated).Practical.ShouldBe((muscle.LengthAt(Seated).Anatomical - 0.108) / (0.937 - 0.108), 1e-12);
    }

    [Fact]
    public void The_practical_length_ends_at_its_range()
    {
        var muscle = MuscleModel.FindMuscle("biceps femoris long head")!;
        muscle.LengthAt(ModelPart.Posture((JointMotion.HipFlexion, 120))).Practical.ShouldBe(1);
        muscle.LengthAt(ModelPart.Posture((JointMotion.HipFlexion, 120))).Anatomical.ShouldBeGreaterThan(0.929);
    }

    [Fact]
    public void A_target_weighs_its_muscles_by_share_and_names_what_it_does_not_know()
    {
        var target = Of(("biceps femoris long head", 3), ("biceps femoris short head", 1), ("popliteus", 1));
        target.Missing.ShouldBe(["popliteus"]);
        target.CoveredShare.ShouldBe(0.8);
        target.Reliability.ShouldBe(Reliability.Plausible);
        double Length(string name) => MuscleModel.FindMuscle(name)!.LengthAt(Seated).Practical;
        target.LengthAt(Seated)!.Value.Practical.ShouldBe((0.75 * Length("biceps femoris long head")) + (0.25 * Length("biceps femoris short head")), 1e-12);
    }

    [Fact]
    public void A_target_of_unknown_muscles_has_no_length()
    {
        Of(("popliteus", 1)).LengthAt(Seated).ShouldBeNull();
        Of(("popliteus", 1)).Reliability.ShouldBeNull();
        Of().CoveredShare.ShouldBe(0);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_share_must_be_a_number_over_0(double share) => Should.Throw<ArgumentOutOfRangeException>(() => Of(("soleus", share)));

    [Fact]
    public void An_angle_beyond_the_data_is_held_at_the_end_and_told()
    {
        var length = ModelPart.Named("bflh").LengthAt(ModelPart.Posture((JointMotion.HipFlexion, 130), (JointMotion.KneeFlexion, 140)));
        length.First.ShouldBe(new Excess(JointCoordinate.HipFlexion, 10));
        length.Second.ShouldBe(new Excess(JointCoordinate.KneeFlexion, 5));
        length.Metres.ShouldBe(ModelPart.Named("bflh").LengthAt(ModelPart.Posture((JointMotion.HipFlexion, 120), (JointMotion.KneeFlexion, 135))).Metres);
        MuscleModel.FindMuscle("biceps femoris long head")!.LengthAt(ModelPart.Posture((JointMotion.HipFlexion, 130))).Worst.Degrees.ShouldBe(10);
    }

    [Fact]
    public void A_muscle_of_the_third_grade_gives_the_sign_of_its_moment_arm_only()
    {
        var arm = MuscleModel.FindMuscle("rhomboids")!.MomentArmAbout(JointMotion.ShoulderAbduction, ModelPart.Posture((JointMotion.ShoulderAbduction, 90)))!.Value;
        arm.Metres.ShouldBeNull();
        arm.Sign.ShouldBe(-1);
    }

    [Theory]
    [InlineData("deltoid acromial", JointMotion.ShoulderAbduction, 1)]
    [InlineData("latissimus dorsi", JointMotion.ShoulderAbduction, -1)]
    [InlineData("deltoid anterior", JointMotion.ShoulderFlexion, 1)]
    [InlineData("latissimus dorsi", JointMotion.ShoulderFlexion, -1)]
    [InlineData("pectoralis major sternocostal", JointMotion.ShoulderHorizontalAdduction, 1)]
    [InlineData("deltoid posterior", JointMotion.ShoulderHorizontalAdduction, -1)]
    [InlineData("gluteus medius", JointMotion.HipAbduction, 1)]
    [InlineData("rectus femoris", JointMotion.KneeFlexion, -1)]
    [InlineData("rectus femoris", JointMotion.HipFlexion, 1)]
    [InlineData("soleus", JointMotion.AnkleDorsiflexion, -1)]
    public void A_muscle_turns_the_joint_the_way_anatomy_books_say(string muscle, JointMotion motion, int sign) =>
        MuscleModel.FindMuscle(muscle)!.MomentArmAbout(motion, ModelPart.Posture((JointMotion.ShoulderAbduction, 45), (JointMotion.KneeFlexion, 45)))!.Value.Sign.ShouldBe(sign);

    private static MuscleTarget Of(params (string Name, double Share)[] shares) => MuscleTarget.Of(shares.Select(share => KeyValuePair.Create(share.Name, share.Share)));
}
