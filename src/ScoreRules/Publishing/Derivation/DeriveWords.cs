using System.Globalization;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Facts;
using ScoreRules.Mechanics.Muscles;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Checks;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing.Derivation;

/// <summary>Words for what mechanics derives.</summary>
internal static class DeriveWords
{
    /// <summary>A method in a few words.</summary>
    public static string Method(MomentMethod method) => method switch
    {
        MomentMethod.OpenArm => "open arm",
        MomentMethod.OpenLeg => "open leg",
        MomentMethod.InLine => "force through the elbow",
        MomentMethod.FootReaction => "ground under the foot",
        MomentMethod.Sled => "sled on a track",
        MomentMethod.TrunkOverHips => "trunk over the hips",
        MomentMethod.Bridge => "bridge from shoulders to feet",
        MomentMethod.BodyOverKnees => "body over the knees",
        _ => "calf lever",
    };

    /// <summary>Why a method was taken.</summary>
    public static string Why(MomentMethod method) => method switch
    {
        MomentMethod.OpenArm => "the arm's own posture is stated, so all forces beyond the joint are counted",
        MomentMethod.OpenLeg => "the leg is free to move, so all forces beyond the joint are counted",
        MomentMethod.InLine => "elbow and shoulder move together and nobody states the turn of the upper arm, so the forearm is taken in line with the load",
        MomentMethod.FootReaction => "the foot stands flat, so the floor carries body and load",
        MomentMethod.Sled => "the platform moves on a track, so it pushes along the track",
        MomentMethod.TrunkOverHips => "the trunk turns over the hips with all that hangs on it",
        MomentMethod.Bridge => "shoulders and feet rest on something and the hips are free",
        MomentMethod.BodyOverKnees => "the knees rest on the floor and the body above them turns",
        _ => "the ball of the foot carries and the ankle stands behind it",
    };

    /// <summary>A reliability in words, with the letter of the data.</summary>
    public static string Grade(Reliability? grade) => grade switch
    {
        Reliability.Agreed => "A",
        Reliability.Plausible => "B",
        Reliability.SignOnly => "C",
        _ => "-",
    };

    /// <summary>Where a number came from.</summary>
    public static string Origin(InputOrigin origin) => origin switch
    {
        InputOrigin.Stated => "stated",
        InputOrigin.Derived => "derived",
        _ => "assumed",
    };

    /// <summary>A motion in words.</summary>
    public static string Motion(JointMotion motion) => MotionWords.Of(motion);

    /// <summary>Whose body: "80 kg, 180 cm, male".</summary>
    public static string Person(Person person) =>
        $"{Number(person.MassKilograms, 1)} kg, {Number(person.StatureMetres * 100, 1)} cm, {(person.Sex == Sex.Female ? "female" : "male")}";

    /// <summary>A value in the unit in which people read it: parts in %, newton metres with one decimal, angles whole.</summary>
    public static string Value(DerivedFact fact, double value) => fact switch
    {
        { Unit: "°" } => $"{Number(value, 0)}°",
        { Unit.Length: > 0 } => $"{Number(value, 1)} {fact.Unit.Replace("N m", "Nm", StringComparison.Ordinal)}",
        { High: 1 } => $"{Number(value * 100, 0)} %",
        _ => Number(value, 0),
    };

    /// <summary>An interval without its unit: "61 to 74".</summary>
    public static string Interval(DerivedFact fact, FactInterval interval) =>
        string.Join(" to ", new[] { interval.Low, interval.High }.Select(end => Number(fact.High == 1 ? end * 100 : end, fact.Unit is "N m" ? 1 : 0)));

    /// <summary>A number with at most so many decimals, half away from zero.</summary>
    public static string Number(double value, int decimals) => Rounding.Printed(value, decimals).ToString("0.####", CultureInfo.InvariantCulture);
}
