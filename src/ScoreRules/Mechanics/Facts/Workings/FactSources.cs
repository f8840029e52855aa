using System.Collections.Immutable;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Muscles;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Checks;
using ScoreRules.Mechanics.Statics.Loads;

namespace ScoreRules.Mechanics.Facts.Workings;

/// <summary>Tells for each fact what made it, or what it lacks.</summary>
internal sealed class FactSources
{
    private readonly MomentProfile profile;
    private readonly MuscleTarget across;
    private readonly MuscleTarget whole;
    private readonly bool isEven;
    private readonly ImmutableArray<InputUse> angles;
    private readonly ImmutableArray<InputUse> all;

    public FactSources(MomentProfile profile, MuscleTarget across, MuscleTarget whole, bool isEven)
    {
        (this.profile, this.across, this.whole, this.isEven) = (profile, across, whole, isEven);
        angles = [.. Enum.GetValues<JointMotion>().Where(motion => across.Muscles.Any(muscle => muscle.Crosses(motion))).SelectMany(Ends)];
        all = [.. profile.Inputs, .. angles];
    }

    /// <summary>A fact with its value and where that comes from.</summary>
    public FactValue Value(DerivedFact fact, Working working, FactInterval?[] intervals, int index)
    {
        var value = fact.Compute(working);
        return new FactValue(
            fact,
            value,
            intervals.Length > 0 ? intervals[index] : null,
            fact.IsOfMuscles ? across.Reliability : null,
            isEven && value is not null && fact.Basis is FactBasis.Shape or FactBasis.ShapeAndLengths,
            value is null ? [] : Inputs(fact),
            value is null ? [.. Missing(fact).Distinct(StringComparer.Ordinal)] : []);
    }

    private ImmutableArray<InputUse> Inputs(DerivedFact fact) => fact.Basis switch
    {
        FactBasis.Lengths => angles,
        FactBasis.ShapeAndLengths => all,
        FactBasis.Shape when fact.IsOfLongThird => all,
        FactBasis.Support => [],
        _ => profile.Inputs,
    };

    private IEnumerable<InputUse> Ends(JointMotion motion)
    {
        var (start, end) = (profile.Mechanism.Start, profile.Mechanism.End);
        yield return new InputUse($"{MotionWords.Of(motion)} at the start", start[motion], "°", Origin(start, motion));
        yield return new InputUse($"{MotionWords.Of(motion)} at the end", end[motion], "°", Origin(end, motion));
    }

    private static InputOrigin Origin(Posture posture, JointMotion motion) => posture.Degrees.ContainsKey(motion) ? InputOrigin.Stated : InputOrigin.Assumed;

    private IEnumerable<string> Missing(DerivedFact fact) => fact.Basis switch
    {
        FactBasis.Lengths => MissingMuscles(),
        FactBasis.ShapeAndLengths => [.. MissingMuscles(), .. MissingMoments()],
        FactBasis.Shape when fact.IsOfLongThird => [.. MissingMuscles(), .. MissingMoments()],
        FactBasis.Strain => MissingStrain(fact),
        FactBasis.Support => ["How the body is held and how many sides work is not stated."],
        _ => MissingMoments(),
    };

    private IEnumerable<string> MissingMuscles()
    {
        if (across.Muscles.IsEmpty)
        {
            yield return whole.Muscles.IsEmpty
                ? "None of the target's muscles has a known length."
                : $"None of the target's muscles crosses the working joint ({MotionWords.Of(profile.Mechanism.WorkingJoint)}).";
        }
    }

    // A cam's radius gives the moment about the working joint, but not the force in the hand.
    private IEnumerable<string> MissingStrain(DerivedFact fact) => profile.Curve is null && profile.Mechanism.Resistance is not Resistance.Cam
        ? MissingCurve()
        : [$"The {fact.Name} does not apply to this movement, or cannot be told from what it states."];

    private IEnumerable<string> MissingMoments() => profile.Curve is null ? MissingCurve() : ["The load helps the target at every angle, so there is no peak."];

    private IEnumerable<string> MissingCurve() =>
    [
        .. profile.Missing.Where(input => input.StopsTheCurve).Select(input => $"The {input.Name} is not stated. {input.Gain}"),
        .. profile.Findings.Where(finding => finding.Severity == FindingSeverity.Refused).Select(finding => finding.Headline),
    ];
}
