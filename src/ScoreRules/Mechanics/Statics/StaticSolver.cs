using System.Runtime.InteropServices;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Statics.Checks;
using ScoreRules.Mechanics.Statics.Curves;
using ScoreRules.Mechanics.Statics.Methods;
using ScoreRules.Mechanics.Statics.Preparing;

namespace ScoreRules.Mechanics.Statics;

/// <summary>From a mechanism to the moment about its working joint over the lifting phase. Rigid segments, no speed.</summary>
public static class StaticSolver
{
    /// <summary>The profile of a movement. Never throws for what a mechanism says: what cannot be is refused in the findings.</summary>
    /// <param name="mechanism">The movement.</param>
    /// <param name="steps">Number of evenly spaced angles, 3 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 3 steps.</exception>
    public static MomentProfile Solve(Mechanism mechanism, int steps = MomentCurve.Steps)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(steps, 3);
        var ledger = new Ledger();
        var curve = Solve(StandingPosture.Complete(mechanism, ledger), ledger, steps);
        return ledger.Close(mechanism, ledger.IsStopped ? null : curve);
    }

    private static MomentCurve? Solve(Mechanism mechanism, Ledger ledger, int steps)
    {
        ledger.Object(InputChecks.Of(mechanism));
        if (ledger.IsStopped)
        {
            return null;
        }

        var setup = LoadSettling.Settle(Prepare(mechanism, ledger), ledger);
        var method = MethodBuilding.Build(setup, ledger);
        ledger.Object(PostureChecks.Of(setup));
        if (ledger.IsStopped)
        {
            return null;
        }

        var curve = Curve(setup, method, steps);
        ledger.Object(CurveChecks.Of(setup, curve));
        return curve;
    }

    private static Setup Prepare(Mechanism mechanism, Ledger ledger)
    {
        var person = mechanism.Person;
        var origin = person == Person.Default ? InputOrigin.Assumed : InputOrigin.Stated;
        ledger.Use("body mass", "kg", person.MassKilograms, origin);
        ledger.Use("stature", "m", person.StatureMetres, origin);
        var (start, end) = (mechanism.Start[mechanism.WorkingJoint], mechanism.End[mechanism.WorkingJoint]);
        ledger.Use("start of the range", "°", start, InputOrigin.Stated);
        ledger.Use("end of the range", "°", end, InputOrigin.Stated);
        return Settled.Blank(mechanism);
    }

    private static MomentCurve Curve(Setup setup, IMomentMethod method, int steps)
    {
        var points = new CurvePoint[steps];
        for (var i = 0; i < steps; i++)
        {
            var angles = JointAngles.Between(setup.Start, setup.End, (double)i / (steps - 1));
            var (angle, parts) = (angles[setup.Working], method.At(angles));
            points[i] = new CurvePoint(angle, setup.Cam is { } cam ? setup.LoadNewtons * cam.Of(angle) : parts.Load, parts.Body, parts.Limb);
        }

        return new MomentCurve(setup.Working, ImmutableCollectionsMarshal.AsImmutableArray(points));
    }
}
