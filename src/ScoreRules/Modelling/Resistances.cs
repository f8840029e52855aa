using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Loads;

namespace ScoreRules.Modelling;

/// <summary>From what a movement says about its load to what makes the force.</summary>
internal static class Resistances
{
    /// <summary>The resistance, or null when the words do not say which.</summary>
    public static Resistance? Of(Movement movement, MovementWords words)
    {
        var load = movement.Geometry.OfType<GeometryLine.Load>().FirstOrDefault();
        return words switch
        {
            { LineOfPull: "to pulley" } => new Resistance.Cable(Newtons(load), Place(movement)),
            { LineOfPull: "to anchor" } => new Resistance.Band(Law(movement), Place(movement)),
            { LineOfPull: "perpendicular to lever" } => new Resistance.Cam(Kilograms(load), Table(movement, "cam radius")),
            { Resistance: "sled" } => new Resistance.Sled(Kilograms(load), words.TrackSlope),
            { Resistance: "body weight" or "assisted body-weight" } => new Resistance.BodyWeight(Kilograms(load) ?? 0),
            { LineOfPull: "gravity" or "along track" } => new Resistance.Weight(Kilograms(load)),
            _ => null,
        };
    }

    private static Vector3? Place(Movement movement) =>
        movement.Geometry.OfType<GeometryLine.Place>().FirstOrDefault(place => place.Name == "pulley") is { } at ? new Vector3(at.Forward, at.Up, at.Out) : null;

    private static PiecewiseLinear? Table(Movement movement, string name) =>
        movement.Geometry.OfType<GeometryLine.Table>().FirstOrDefault(table => table.Name == name) is { } table ? new PiecewiseLinear(table.Pairs) : null;

    // Two measured pulls give stiffness and slack length: k = (T2 - T1) / (L2 - L1), L0 = L1 - T1 / k.
    private static BandLaw? Law(Movement movement)
    {
        if (Table(movement, "band") is not { } measured)
        {
            return null;
        }

        if (measured.Points is not [var (shorter, less), var (longer, more)])
        {
            return new BandLaw.Table(measured);
        }

        var stiffness = (more - less) / (longer - shorter);
        return new BandLaw.Linear(stiffness, shorter - (less / stiffness));
    }

    private static double? Newtons(GeometryLine.Load? load) => load is null ? null : load.IsForce ? load.Amount : load.Amount * BodyConstants.Gravity;

    private static double? Kilograms(GeometryLine.Load? load) => load is null ? null : load.IsForce ? load.Amount / BodyConstants.Gravity : load.Amount;
}
