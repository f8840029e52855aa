using ScoreRules.Mechanics.Bodies;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Muscles;

/// <summary>Lengths and moment arms to pin, from muscle-acceptance-values.csv; postures as the words of each row give them.</summary>
public sealed class MuscleAcceptanceTests
{
    private static readonly Dictionary<string, (string Part, Posture At)> Lengths = new()
    {
        ["N-biceps_long"] = ("biceps long", ModelPart.Posture((JointMotion.ShoulderFlexion, -45))),
        ["N-biceps_long-2"] = ("biceps long", Posture.Anatomical),
        ["N-biceps_long-3"] = ("biceps long", ModelPart.Posture((JointMotion.ShoulderFlexion, 55))),
        ["N-triceps_long"] = ("triceps long", ModelPart.Posture((JointMotion.ShoulderFlexion, 150), (JointMotion.ElbowFlexion, 90))),
        ["N-triceps_long-2"] = ("triceps long", ModelPart.Posture((JointMotion.ElbowFlexion, 90))),
        ["N-bflh"] = ("bflh", ModelPart.Posture((JointMotion.HipFlexion, 90))),
        ["N-bflh-2"] = ("bflh", ModelPart.Posture((JointMotion.KneeFlexion, 90))),
        ["N-recfem"] = ("recfem", ModelPart.Posture((JointMotion.KneeFlexion, 100))),
        ["N-recfem-2"] = ("recfem", ModelPart.Posture((JointMotion.HipFlexion, 90), (JointMotion.KneeFlexion, 100))),
        ["N-gasmed"] = ("gasmed", ModelPart.Posture((JointMotion.AnkleDorsiflexion, 15))),
        ["N-gasmed-2"] = ("gasmed", ModelPart.Posture((JointMotion.KneeFlexion, 90), (JointMotion.AnkleDorsiflexion, 15))),
        ["N-vaslat"] = ("vaslat", ModelPart.Posture((JointMotion.KneeFlexion, 90))),
        ["N-glmax2"] = ("glmax2", ModelPart.Posture((JointMotion.HipFlexion, 100))),
        ["N-soleus"] = ("soleus", ModelPart.Posture((JointMotion.AnkleDorsiflexion, 15))),
    };

    public static TheoryData<string, double, double> Rows() =>
        [.. ModelPart.Rows("muscle-acceptance-values").Select(row => (row["id"], ModelPart.Number(row["expected"]), ModelPart.Number(row["tolerance"])))];

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_value_is_as_pinned(string id, double expected, double tolerance) => Ours(id).ShouldBe(expected, tolerance);

    private static double Ours(string id) => id switch
    {
        "MA-biceps90" => Arm("biceps long", 90),
        "MA-tri30" => Arm("triceps lateral", 30),
        "MA-ham" => 1000 * (ModelPart.Named("bflh").LengthAt(Lengths["N-bflh"].At).Metres - ModelPart.Named("bflh").LengthAt(Posture.Anatomical).Metres),
        _ => ModelPart.Named(Lengths[id].Part).LengthAt(Lengths[id].At).Normalised,
    };

    private static double Arm(string part, double elbow) =>
        1000 * ModelPart.Named(part).MomentArmAbout(JointMotion.ElbowFlexion, ModelPart.Posture((JointMotion.ElbowFlexion, elbow)))!.Value.Metres!.Value;
}
