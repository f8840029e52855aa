using System.Collections.Immutable;

namespace ScoreRules.Guarding.Breaking;

/// <summary>All breakages of a house and what became of them.</summary>
/// <param name="Outcomes">In the order in which they were tried.</param>
/// <param name="Pins">Expectations that would notice all that is unnoticed now.</param>
public sealed record BreakageReport(ImmutableArray<BreakageOutcome> Outcomes, PinChoice Pins)
{
    /// <summary>How many moved a tier.</summary>
    public int Moved => Noticed + Unnoticed.Length;

    /// <summary>How many of those an expectation noticed.</summary>
    public int Noticed => Outcomes.Count(outcome => outcome.Effect == BreakageEffect.Noticed);

    /// <summary>Those that moved a tier unnoticed.</summary>
    public ImmutableArray<BreakageOutcome> Unnoticed => [.. Outcomes.Where(outcome => outcome.Effect == BreakageEffect.Unnoticed)];

    /// <summary>The share that was noticed, of those that moved a tier, 0 to 1; null when none did.</summary>
    public double? Score => Moved == 0 ? null : (double)Noticed / Moved;
}
