using ScoreRules.Language.Binding;

namespace ScoreRules.Evidence;

/// <summary>Turns what studies tell into points.</summary>
/// <param name="evidence">How the house weighs studies; null when it does not say.</param>
internal sealed class PointScale(EvidenceDefinition? evidence)
{
    /// <summary>
    /// An amount in points. Of standard deviations: d k with variance k^2 s^2 + d^2 t^2 + s^2 t^2, where k give or take t is what one is worth
    /// and d give or take s what was found, the two being independent (Goodman 1960, Journal of the American Statistical Association 55:708).
    /// </summary>
    /// <returns>Null, and the reason, when it cannot be turned.</returns>
    public (UncertainNumber? Points, NotCountedReason? Lacks) Of(StudyFinding finding) => finding switch
    {
        { Amount: null } => (null, NotCountedReason.TooUnclear),
        { Unit: "points", Amount: { } points } => (points, null),
        { Unit: "sd", Amount: { } found } when evidence?.StandardDeviationIsWorth is { } worth => (Product(found, worth), null),
        { Unit: "sd" } => (null, NotCountedReason.NoWorthOfDeviation),
        _ => (null, NotCountedReason.Percent),
    };

    private static UncertainNumber Product(UncertainNumber found, UncertainNumber worth)
    {
        var (s, t) = (found.Spread, worth.Spread);
        var variance = (worth.Number * worth.Number * s * s) + (found.Number * found.Number * t * t) + (s * s * t * t);
        return UncertainNumber.GiveOrTake(found.Number * worth.Number, Math.Sqrt(variance));
    }
}
