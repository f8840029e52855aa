using ScoreRules.Mechanics.Muscles;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Curves;
using ScoreRules.Mechanics.Statics.Loads;

namespace ScoreRules.Mechanics.Facts.Workings;

/// <summary>From a movement and a target to its facts.</summary>
internal static class FactFinding
{
    public static MovementFacts Find(Mechanism mechanism, MuscleTarget target, FactOptions options)
    {
        var profile = StaticSolver.Solve(mechanism);
        var across = target.Across(mechanism.WorkingJoint);
        var isEven = options.AcceptsEvenLoad && IsMachineWithoutCam(profile);
        var sweep = LengthSweep.Of(mechanism, across);
        var working = Working.Of(profile, sweep, isEven, options.Support);
        var spread = options.WithIntervals ? Spread.Of(working, profile, isEven) : Spread.None;
        var sources = new FactSources(profile, across, target, isEven);
        return new MovementFacts(
            profile,
            across,
            [.. target.Muscles.Where(muscle => !muscle.Crosses(mechanism.WorkingJoint)).Select(muscle => muscle.Name)],
            [.. DerivedFacts.All.Select((fact, index) => sources.Value(fact, working, spread.Intervals, index))],
            profile.Curve is { } curve ? CurveSummary.HelpingSpans(curve) : [],
            sweep.Worst,
            sweep.OffSagittal,
            spread.Tried,
            spread.Failed);
    }

    private static bool IsMachineWithoutCam(MomentProfile profile) =>
        profile is { Curve: null, Mechanism.Resistance: Resistance.Cam { RadiusByAngle: null } } && profile.Findings.All(finding => finding.Severity != Statics.Checks.FindingSeverity.Refused);
}
