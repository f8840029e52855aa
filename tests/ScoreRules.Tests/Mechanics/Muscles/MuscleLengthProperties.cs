using CsCheck;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Muscles;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Muscles;

/// <summary>What must hold of all parts in all postures.</summary>
public sealed class MuscleLengthProperties
{
    private static readonly JointMotion[] Motions =
    [
        JointMotion.ShoulderFlexion, JointMotion.ShoulderAbduction, JointMotion.ShoulderHorizontalAdduction, JointMotion.ElbowFlexion,
        JointMotion.HipFlexion, JointMotion.HipAbduction, JointMotion.KneeFlexion, JointMotion.AnkleDorsiflexion,
    ];

    private static readonly (double Low, double High)[] Ranges = [(-60, 180), (0, 170), (-45, 135), (0, 150), (-20, 130), (-25, 45), (0, 145), (-50, 35)];

    private static readonly Gen<MusclePart> Parts = Gen.OneOf([.. MuscleModel.Parts.Select(Gen.Const)]);

    private static readonly Gen<JointAngles> Postures = Gen.Double[0, 1].Array[Ranges.Length].Select(shares =>
    {
        var angles = default(JointAngles);
        for (var i = 0; i < shares.Length; i++)
        {
            angles = angles.With(Motions[i], double.Lerp(Ranges[i].Low, Ranges[i].High, shares[i]));
        }

        return angles;
    });

    [Fact]
    public void Inside_the_ranges_of_a_part_its_length_lies_between_shortest_and_longest() => Gen.Select(Parts, Gen.Double[0, 1], Gen.Double[0, 1]).Sample((part, x, y) =>
    {
        var first = double.Lerp(part.First.Low, part.First.High, x);
        var second = part.Second is { } range ? double.Lerp(range.Low, range.High, y) : 0;
        part.LengthAt(ModelPart.At(part.First.Coordinate, first, part.Second?.Coordinate, second)).Normalised.ShouldBeInRange(-0.035, 1.035, part.Name);
    });

    [Fact]
    public void A_small_step_changes_a_length_by_little() => Gen.Select(Parts, Postures, Gen.Int[0, Motions.Length - 1]).Sample((part, angles, which) =>
    {
        const double step = 0.01;
        var moved = angles.With(Motions[which], angles[Motions[which]] + step);

        // No moment arm of the body is over 0.15 m; the gap behind the back is bridged faster, by up to 0.2 m for a radian.
        Math.Abs(Length(part, moved) - Length(part, angles)).ShouldBeLessThan(0.2 * step * Math.PI / 180, $"{part.Name} {Motions[which]}");
    });

    [Fact]
    public void A_moment_arm_is_the_change_of_length_with_the_angle() => Gen.Select(Parts, Postures, Gen.Int[0, Motions.Length - 1]).Sample((part, angles, which) =>
    {
        const double step = 0.001;
        var (before, after) = (angles.With(Motions[which], angles[Motions[which]] - step), angles.With(Motions[which], angles[Motions[which]] + step));
        if (part.MomentArmAbout(Motions[which], angles) is { Metres: { } metres, Worst.IsClamped: false } && !IsGrid(part) && IsInside(part, before) && IsInside(part, after))
        {
            metres.ShouldBe(-(Length(part, after) - Length(part, before)) / (2 * step * Math.PI / 180), 2e-4, $"{part.Name} about {Motions[which]}");
        }
    });

    [Fact]
    public void Trunk_and_forearm_have_no_part_in_a_length() => Gen.Select(Parts, Postures, Gen.Double[-90, 90]).Sample((part, angles, degrees) =>
        Length(part, angles.With(JointMotion.TrunkPitch, degrees).With(JointMotion.TrunkRoll, -degrees).With(JointMotion.ForearmSupination, degrees)).ShouldBe(Length(part, angles)));

    private static double Length(MusclePart part, in JointAngles angles) => part.LengthAt(JointCoordinates.Of(angles)).Metres;

    private static bool IsInside(MusclePart part, in JointAngles angles) =>
        part.LengthAt(JointCoordinates.Of(angles)) is { First.IsClamped: false, Second.IsClamped: false };

    private static bool IsGrid(MusclePart part) => part.Name is "infraspinatus" or "trapezius mid" or "trapezius upper" or "trapezius low";
}
