using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Loads;
using static ScoreRules.Mechanics.Statics.Checks.Objections;

namespace ScoreRules.Mechanics.Statics.Checks;

/// <summary>Numbers that are none, out of range, or plainly in another unit.</summary>
internal static class NumberChecks
{
    public static IEnumerable<MechanicsFinding> Of(Mechanism mechanism)
    {
        IEnumerable<MechanicsFinding?> all =
        [
            Within("body mass", mechanism.Person.MassKilograms, 1, 500, "kg", "kilograms"),
            Within("stature", mechanism.Person.StatureMetres, 0.5, 2.6, "m", "metres, such as 1.80 m"),
            Within("number of limbs that share the load", mechanism.SharedBy, 1, 2, "", "1 or 2"),
            Within("share of body weight", mechanism.BodyShare, 0, 1, "", "a part of 1, such as 0.65"),
            Within("foot line", mechanism.FootLineMetres, -0.15, 0.35, "m", "metres along the foot from the ankle"),
            Within("height of the foot support", mechanism.FootSupportMetres, -1.5, 1.5, "m", "metres over the shoulders"),
            Within("ball of the foot ahead of the ankle", mechanism.BallOfFoot?.Ahead, 0.02, 0.3, "m", "metres"),
            Within("ball of the foot below the ankle", mechanism.BallOfFoot?.Below, 0, 0.2, "m", "metres"),
            .. Angles(mechanism.Start),
            .. Angles(mechanism.End),
            .. Load(mechanism.Resistance),
        ];
        return all.OfType<MechanicsFinding>();
    }

    private static IEnumerable<MechanicsFinding?> Angles(Posture posture) =>
        posture.Degrees.OrderBy(pair => pair.Key).Select(pair => Within(MotionWords.Of(pair.Key), pair.Value, -360, 360, "°", "degrees"));

    private static IEnumerable<MechanicsFinding?> Load(Resistance resistance) => resistance switch
    {
        Resistance.Weight weight => [Mass("load", weight.Kilograms)],
        Resistance.BodyWeight body => [Mass("added load", body.AddedKilograms)],
        Resistance.Cable cable => [Within("cable tension", cable.Newtons, 0, 20000, "N", "newtons; 1 kg of stack is about 10 N"), .. Place("pulley", cable.Pulley)],
        Resistance.Band band => [.. Band(band.Law), .. Place("anchor", band.Anchor)],
        Resistance.Cam cam => [Mass("stack", cam.Kilograms), .. Table("cam", cam.RadiusByAngle, "angle and radius", 0, 2)],
        Resistance.Sled sled => [Mass("sled load", sled.Kilograms), Within("slope of the track", sled.SlopeDegrees, 0, 90, "°", "degrees from the floor, 90 for upright")],
        _ => [],
    };

    private static IEnumerable<MechanicsFinding?> Band(BandLaw? law) => law switch
    {
        BandLaw.Linear two => [Within("band stiffness", two.NewtonsPerMetre, 0, 20000, "N/m", "newtons per metre"), Within("band slack length", two.SlackMetres, 0, 10, "m", "metres")],
        BandLaw.Table table => [.. Table("band", table.Measured, "length and tension", 0, 20000)],
        _ => [],
    };

    private static IEnumerable<MechanicsFinding?> Table(string name, PiecewiseLinear? table, string pairs, double low, double high)
    {
        if (table is null)
        {
            return [];
        }

        var points = table.Points;
        return points.IsDefaultOrEmpty || points.Zip(points.Skip(1)).Any(pair => !(pair.First.At < pair.Second.At)) || !points.All(point => double.IsFinite(point.At))
            ? [Refuse(FindingKind.Table, $"The table of the {name} does not rise in its first number.", $"State pairs of {pairs}, the first number rising.")]
            : points.Select(point => Within($"value in the table of the {name}", point.Value, low, high, "", "0 or more"));
    }

    private static MechanicsFinding? Mass(string name, double? kilograms) => Within(name, kilograms, 0, 2000, "kg", "kilograms, 0 or more");

    private static IEnumerable<MechanicsFinding?> Place(string name, Vector3? place) => place is not { } at
        ? []
        : [Within($"{name} forward", at.X, -15, 15, "m", "metres"), Within($"{name} up", at.Y, -15, 15, "m", "metres"), Within($"{name} out", at.Z, -15, 15, "m", "metres")];

    private static MechanicsFinding? Within(string name, double? value, double low, double high, string unit, string meant)
    {
        if (value is not { } number || (number >= low && number <= high))
        {
            return null;
        }

        var shown = double.IsFinite(number) ? $"is {$"{Number(number)} {unit}".TrimEnd()}" : "is not a number";
        return Refuse(FindingKind.BadNumber, $"The {name} {shown}; it must be from {Number(low)} to {$"{Number(high)} {unit}".TrimEnd()}.", $"State it in {meant}.");
    }
}
