using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;
using ScoreRules.Scoring;

namespace ScoreRules.Tiering;

/// <summary>
/// Shifts a placement by one tier where an author judges so, after limits. A judgement never lifts a movement above a cap that asks
/// who somebody is.
/// </summary>
internal sealed class JudgementRule(BoundRuleset ruleset)
{
    private readonly ILookup<string, PlaceDefinition> byMovement = ruleset.Places.Where(place => place.Shift != 0).ToLookup(place => NameText.Key(place.Movement), StringComparer.Ordinal);

    /// <summary>The tier after judgement, and the judgement; null when none applies.</summary>
    /// <param name="row">The movement and the target.</param>
    /// <param name="tier">Its tier after limits.</param>
    /// <param name="limits">Caps and floors that apply to it.</param>
    public (TierDefinition Tier, PlaceDefinition? Judgement) Apply(PlacementRow row, TierDefinition tier, ImmutableArray<LimitDefinition> limits)
    {
        var judgement = byMovement[NameText.Key(row.Movement.Name)].FirstOrDefault(place => ScopeResolution.Reaches(place.Info, row));
        if (judgement is null)
        {
            return (tier, null);
        }

        var highest = limits.Where(limit => limit.IsCap && ConditionWalk.AsksWho(limit.Condition)).Select(limit => limit.Tier.Index).DefaultIfEmpty(0).Max();
        return (ruleset.Tiers[Shifted(tier.Index, judgement.Shift, highest, ruleset.Tiers.Length - 1)], judgement);
    }

    /// <summary>A tier after a shift, by position; 0 for the best.</summary>
    /// <param name="tier">The tier after limits.</param>
    /// <param name="shift">By how many tiers; -1 is one higher.</param>
    /// <param name="highest">The best tier that caps which ask who somebody is allow.</param>
    /// <param name="last">The worst tier.</param>
    public static int Shifted(int tier, int shift, int highest, int last) => Math.Clamp(tier + shift, Math.Min(highest, tier), last);

}
