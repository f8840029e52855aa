using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Loads;

namespace ScoreRules.Mechanics.Facts.Workings;

/// <summary>Resistances with one number changed.</summary>
internal static class LoadChange
{
    /// <summary>With pulley or anchor moved; none where there is none.</summary>
    public static Resistance? Moved(Resistance resistance, Vector3 by) => resistance switch
    {
        Resistance.Cable { Pulley: { } pulley } cable => cable with { Pulley = pulley + by },
        Resistance.Band { Anchor: { } anchor } band => band with { Anchor = anchor + by },
        _ => null,
    };

    /// <summary>With a multiple of the load that was used, stated or not; none where nothing is loaded besides the body.</summary>
    public static Resistance? Scaled(MomentProfile profile, double factor) => profile.Mechanism.Resistance switch
    {
        Resistance.Weight weight => weight with { Kilograms = factor * Used(profile, "load") },
        Resistance.Cable cable => cable with { Newtons = factor * Used(profile, "cable tension") },
        Resistance.Band band => band with { Law = Scaled(band.Law, profile, factor) },
        Resistance.Cam { RadiusByAngle: not null } cam => cam with { Kilograms = factor * Used(profile, "load") },
        Resistance.Sled sled => sled with { Kilograms = factor * Used(profile, "sled load") },
        Resistance.BodyWeight { AddedKilograms: > 0 } body => new Resistance.BodyWeight(factor * body.AddedKilograms),
        _ => null,
    };

    private static double? Used(MomentProfile profile, string name) => profile.Inputs.FirstOrDefault(input => input.Name == name)?.Value;

    private static BandLaw? Scaled(BandLaw? law, MomentProfile profile, double factor) => law switch
    {
        BandLaw.Linear linear => linear with { NewtonsPerMetre = factor * linear.NewtonsPerMetre },
        BandLaw.Table table => new BandLaw.Table(new PiecewiseLinear([.. table.Measured.Points.Select(point => (point.At, factor * point.Value))])),
        _ => Used(profile, "band stiffness") is { } stiffness && Used(profile, "band slack length") is { } slack ? new BandLaw.Linear(factor * stiffness, slack) : null,
    };
}
