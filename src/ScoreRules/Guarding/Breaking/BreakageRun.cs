using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding.Breaking;

/// <summary>Breaks a house in every way, judges each broken one as a whole, and asks whether an expectation noticed.</summary>
/// <param name="before">The house, judged without errors.</param>
public sealed class BreakageRun(Judgement before)
{
    private readonly ImmutableArray<ExpectationDefinition> held = [.. before.Expectations.Where(result => result.Holds).Select(result => result.Expectation)];
    private readonly TierOfRow tiers = TierOfRow.Of(before);

    /// <summary>Tries all breakages.</summary>
    /// <param name="progress">Told how many are done and how many there are; null for nobody.</param>
    /// <param name="cancellation">Stops between two breakages.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public BreakageReport Run(Action<int, int>? progress = null, CancellationToken cancellation = default)
    {
        var breakages = Breakages.Of(before.Ruleset);
        var outcomes = ImmutableArray.CreateBuilder<BreakageOutcome>(breakages.Length);
        foreach (var breakage in breakages)
        {
            cancellation.ThrowIfCancellationRequested();
            outcomes.Add(Try(breakage));
            progress?.Invoke(outcomes.Count, breakages.Length);
        }

        var all = outcomes.MoveToImmutable();
        return new BreakageReport(all, new PinSearch(before).Choose([.. all.Where(outcome => outcome.Effect == BreakageEffect.Unnoticed)]));
    }

    /// <summary>Tries one.</summary>
    public BreakageOutcome Try(Breakage breakage)
    {
        var after = Judge.Again(before, breakage.Ruleset, before.Catalogue);
        if (breakage.Ruleset.Criteria.IsEmpty || after.Rankings.Length < before.Rankings.Length)
        {
            return new BreakageOutcome(breakage, BreakageEffect.NotRanked, [], []);
        }

        var moved = tiers.MovedIn(after);
        ImmutableArray<ExpectationDefinition> noticed = moved.IsEmpty ? [] : [.. after.Expectations.Where(result => !result.Holds && held.Contains(result.Expectation, ReferenceEqualityComparer.Instance)).Select(result => result.Expectation)];
        var effect = moved.IsEmpty ? BreakageEffect.NothingMoved : noticed.IsEmpty ? BreakageEffect.Unnoticed : BreakageEffect.Noticed;
        return new BreakageOutcome(breakage, effect, moved, noticed);
    }
}
