using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics;

namespace ScoreRules.Mechanics.Facts.Workings;

/// <summary>
/// One input at a time: trunk and joints 5 degrees at both ends of the range alike, pulley or anchor 0.10 m along each axis, the line of the
/// foot 0.03 m, load by half and double, stature 10 %. The sizes are those of the reference numbers: common practice, no source.
/// </summary>
internal static class Variations
{
    private const double AngleDegrees = 5;
    private const double PulleyMetres = 0.10;
    private const double FootLineMetres = 0.03;
    private const double StatureShare = 0.10;
    private const double LoadFactor = 2;

    private static readonly double[] Both = [-1, 1];

    private static readonly Vector3[] Axes = [new(PulleyMetres, 0, 0), new(0, PulleyMetres, 0), new(0, 0, PulleyMetres)];

    public static IEnumerable<Variation> Of(MomentProfile profile) =>
        [.. Angles(profile.Mechanism), .. Pulley(profile.Mechanism), .. FootLine(profile), .. Load(profile), .. Stature(profile.Mechanism)];

    // An angle nobody states is 0 by definition of the posture and is not in doubt; trunk pitch always is, a roll of 0 is not.
    private static IEnumerable<Variation> Angles(Mechanism mechanism) =>
        from motion in Enum.GetValues<JointMotion>()
        where motion == JointMotion.TrunkPitch || IsStated(mechanism, motion)
        from sign in Both
        select new Variation(Turned(mechanism, motion, sign * AngleDegrees), motion);

    private static bool IsStated(Mechanism mechanism, JointMotion motion) => motion == JointMotion.TrunkRoll
        ? mechanism.Start[motion] != 0 || mechanism.End[motion] != 0
        : mechanism.Start.Degrees.ContainsKey(motion) || mechanism.End.Degrees.ContainsKey(motion);

    private static Mechanism Turned(Mechanism mechanism, JointMotion motion, double degrees) => mechanism with
    {
        Start = mechanism.Start.With(motion, mechanism.Start[motion] + degrees),
        End = mechanism.End.With(motion, mechanism.End[motion] + degrees),
    };

    private static IEnumerable<Variation> Pulley(Mechanism mechanism) =>
        from axis in Axes
        from sign in Both
        let moved = LoadChange.Moved(mechanism.Resistance, sign * axis)
        where moved is not null
        select new Variation(mechanism with { Resistance = moved }, null);

    private static IEnumerable<Variation> FootLine(MomentProfile profile) =>
        from input in profile.Inputs
        where input.Name == "foot line"
        from sign in Both
        select new Variation(profile.Mechanism with { FootLineMetres = input.Value + (sign * FootLineMetres) }, null);

    private static IEnumerable<Variation> Load(MomentProfile profile) =>
        from factor in new[] { 1 / LoadFactor, LoadFactor }
        let scaled = LoadChange.Scaled(profile, factor)
        where scaled is not null
        select new Variation(profile.Mechanism with { Resistance = scaled }, null);

    private static IEnumerable<Variation> Stature(Mechanism mechanism) =>
        from sign in Both
        select new Variation(mechanism with { Person = mechanism.Person with { StatureMetres = mechanism.Person.StatureMetres * (1 + (sign * StatureShare)) } }, null);
}
