using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Loads;
using ScoreRules.Mechanics.Statics.Methods;

namespace ScoreRules.Mechanics.Statics.Preparing;

/// <summary>Turns a resistance into forces on the limb, noting what is assumed.</summary>
internal static class LoadSettling
{
    private const string LoadGain = "The load in kilograms would fix the size of the moments; their shape hardly changes.";

    public static Setup Settle(Setup setup, Ledger ledger) => WithBody(WithLoad(setup, ledger), ledger);

    private static Setup WithLoad(Setup setup, Ledger ledger) => setup.Mechanism.Resistance switch
    {
        Resistance.Weight weight => WithWeight(setup, Kilograms(setup, weight.Kilograms, ledger)),
        Resistance.BodyWeight body => WithAdded(setup, body.AddedKilograms, ledger),
        Resistance.Cable cable => WithCable(setup, cable, ledger),
        Resistance.Band band => WithBand(setup, band, ledger),
        Resistance.Cam cam => WithCam(setup, cam, ledger),
        Resistance.Sled sled => WithSled(setup, sled, ledger),
        _ => setup,
    };

    private static double Kilograms(Setup setup, double? stated, Ledger ledger) =>
        ledger.Take("load", "kg", stated, UsualLoads.Kilograms(setup.Mechanism.LoadPoint, setup.Body.Person.MassKilograms), LoadGain);

    private static Setup WithWeight(Setup setup, double kilograms)
    {
        var newtons = kilograms * BodyConstants.Gravity / setup.Mechanism.SharedBy;
        return setup with { LoadNewtons = newtons, Load = new Pull.Constant(newtons * Vector3.Down) };
    }

    // A hand that holds the body up is pushed or pulled up; a free limb carries the weight itself.
    private static Setup WithAdded(Setup setup, double kilograms, Ledger ledger)
    {
        ledger.Use("added load", "kg", kilograms, InputOrigin.Stated);
        var weighted = WithWeight(setup, kilograms);
        return HandsCarryBody(setup) ? weighted with { Load = new Pull.Constant(-weighted.LoadNewtons * Vector3.Down) } : weighted;
    }

    private static Setup WithCable(Setup setup, Resistance.Cable cable, Ledger ledger)
    {
        if (cable.Pulley is not { } pulley)
        {
            ledger.Lack("pulley position", "A pulley position would make the load profile computable.");
            return setup;
        }

        UsePlace("pulley", pulley, ledger);
        var newtons = ledger.Take("cable tension", "N", cable.Newtons, UsualLoads.CableNewtons, LoadGain) / setup.Mechanism.SharedBy;
        return setup with { LoadNewtons = newtons, Load = new Pull.ToPulley(newtons, Places.FirstMovingJoint(setup) + pulley) };
    }

    private static Setup WithBand(Setup setup, Resistance.Band band, Ledger ledger)
    {
        if (band.Anchor is not { } anchor)
        {
            ledger.Lack("anchor position", "An anchor position would make the load profile computable.");
            return setup;
        }

        UsePlace("anchor", anchor, ledger);
        if (band.Law is BandLaw.Linear law)
        {
            ledger.Use("band stiffness", "N/m", law.NewtonsPerMetre, InputOrigin.Stated);
            ledger.Use("band slack length", "m", law.SlackMetres, InputOrigin.Stated);
        }

        var at = Places.FirstMovingJoint(setup) + anchor;
        return setup with { Load = new Pull.ToAnchor(band.Law ?? UsualBand(setup, at, ledger), at) };
    }

    private static BandLaw.Linear UsualBand(Setup setup, Vector3 anchor, Ledger ledger)
    {
        const string Gain = "Two numbers of the band, stiffness and slack length, or a measured table would fix where it begins to pull.";
        var slack = UsualLoads.BandSlackOfStart * (anchor - Places.LoadPoint(setup, setup.Start)).Length;
        return new BandLaw.Linear(
            ledger.Take("band stiffness", "N/m", null, UsualLoads.BandNewtonsPerMetre, Gain),
            ledger.Take("band slack length", "m", null, slack, Gain));
    }

    private static Setup WithCam(Setup setup, Resistance.Cam cam, Ledger ledger)
    {
        if (cam.RadiusByAngle is null)
        {
            ledger.Lack("cam radius by angle", "The radius of the cam at several angles would make the load profile computable; until then the load is not taken to be even.");
            return setup;
        }

        return setup with { Cam = cam.RadiusByAngle, LoadNewtons = Kilograms(setup, cam.Kilograms, ledger) * BodyConstants.Gravity / setup.Mechanism.SharedBy };
    }

    private static Setup WithSled(Setup setup, Resistance.Sled sled, Ledger ledger)
    {
        if (sled.SlopeDegrees is { } slope)
        {
            ledger.Use("slope of the track", "°", slope, InputOrigin.Stated);
        }

        var kilograms = ledger.Take("sled load", "kg", sled.Kilograms, setup.Body.Person.MassKilograms, LoadGain);
        return setup with { LoadNewtons = kilograms * BodyConstants.Gravity * Slope.Sine(sled) / setup.Mechanism.SharedBy };
    }

    private static void UsePlace(string name, Vector3 place, Ledger ledger)
    {
        ledger.Use($"{name} forward", "m", place.X, InputOrigin.Stated);
        ledger.Use($"{name} up", "m", place.Y, InputOrigin.Stated);
        ledger.Use($"{name} out", "m", place.Z, InputOrigin.Stated);
    }

    private static Setup WithBody(Setup setup, Ledger ledger)
    {
        if (!BodyCounts(setup))
        {
            return setup;
        }

        var share = ledger.Take("share of body weight on the supports", "", setup.Mechanism.BodyShare, UsualShare(setup.Mechanism), "The share would fix the size of the moments.");
        var slope = setup.Mechanism.Resistance is Resistance.Sled sled ? Slope.Sine(sled) : 1;
        var newtons = share * setup.Body.WeightNewtons * slope / setup.Mechanism.SharedBy;
        return setup with { BodyNewtons = newtons, Support = HandsCarryBody(setup) ? new Pull.Constant(-newtons * Vector3.Down) : Pull.None };
    }

    private static bool BodyCounts(Setup setup) =>
        setup.Mechanism.Method is MomentMethod.FootReaction or MomentMethod.Sled or MomentMethod.CalfLever || HandsCarryBody(setup);

    private static bool HandsCarryBody(Setup setup) =>
        setup.Mechanism is { LoadPoint: LoadPoint.Body, Method: MomentMethod.OpenArm or MomentMethod.InLine };

    private static double UsualShare(Mechanism mechanism) => mechanism.LoadPoint is LoadPoint.Foot or LoadPoint.Thigh ? 0 : 1;
}
