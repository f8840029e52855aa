using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Tiering;

/// <summary>
/// Applies caps and floors: the lowest cap and the highest floor. Where a cap lies below a floor the cap, the cautious
/// side, wins and the clash is reported once for the pair.
/// </summary>
internal sealed class LimitRule(BoundRuleset ruleset, InferenceResult inferred, DiagnosticBag findings)
{
    private readonly EffectiveRules<LimitDefinition> limits = new(ruleset.Limits, inferred);
    private readonly HashSet<(LimitDefinition Cap, LimitDefinition Floor)> reported = [];

    /// <summary>The tier after limits, the limits that apply, and the one that moved the placement.</summary>
    public (TierDefinition Tier, ImmutableArray<LimitDefinition> Limits, LimitDefinition? Binding) Apply(PlacementRow row, TierDefinition before)
    {
        var applying = limits.At(row.Index);
        if (applying.IsEmpty)
        {
            return (before, applying, null);
        }

        var cap = applying.Where(limit => limit.IsCap).MaxBy(limit => limit.Tier.Index);
        var floor = applying.Where(limit => !limit.IsCap).MinBy(limit => limit.Tier.Index);
        if (cap is not null && floor is not null && cap.Tier.Index > floor.Tier.Index)
        {
            Report(row, cap, floor);
            floor = null;
        }

        if (cap is not null && before.Index < cap.Tier.Index)
        {
            return (cap.Tier, applying, cap);
        }

        return floor is not null && before.Index > floor.Tier.Index ? (floor.Tier, applying, floor) : (before, applying, null);
    }

    private void Report(PlacementRow row, LimitDefinition cap, LimitDefinition floor)
    {
        if (reported.Add((cap, floor)))
        {
            findings.Add(new Diagnostic("SR5007", Severity.Warning, $"A cap at \"{cap.Tier.Name}\" lies below a floor at \"{floor.Tier.Name}\", for example for \"{row.Movement.Name}\"", new Label(cap.Info.Location, "never above"))
            {
                Within = cap.Info.Title,
                Section = cap.Info.Section,
                Others = [new Label(floor.Info.Location, "never below")],
                Notes = ["the cap, the cautious side, is applied"],
                Suggestions = [new Suggestion("say which one gives way: add \"except for ...\" or a narrower condition to one of them")],
            });
        }
    }
}
