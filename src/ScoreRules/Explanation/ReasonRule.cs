using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Explanation;

/// <summary>Which reasons are worth telling: so many for and so many against, none smaller than a point or than the house's "a touch".</summary>
internal sealed class ReasonRule(BoundRuleset ruleset)
{
    private readonly double least = Math.Min(1, ruleset.Word("a touch") ?? 1);

    /// <summary>The reasons for.</summary>
    public ImmutableArray<Reason> For(ImmutableArray<Reason> reasons) =>
        [.. reasons.Where(reason => !reason.IsSharedByAll && Rounding.Compared(reason.Points) >= least).Take(ruleset.House?.Reasons ?? 3)];

    /// <summary>The reasons against.</summary>
    public ImmutableArray<Reason> Against(ImmutableArray<Reason> reasons) =>
        [.. reasons.Where(reason => !reason.IsSharedByAll && Rounding.Compared(-reason.Points) >= least).Take(ruleset.House?.ReasonsAgainst ?? 1)];
}
