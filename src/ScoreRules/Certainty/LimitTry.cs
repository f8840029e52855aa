using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Certainty;

/// <summary>Limits and a judgement by a tier, as far as they are in force in a try: the lowest cap, the highest floor, the cap first.</summary>
internal sealed class LimitTry
{
    private readonly (LimitDefinition Limit, int Place)[] limits;
    private readonly int row;
    private readonly int shift;
    private readonly int judgement;

    /// <summary>The limits of a house for a placement.</summary>
    public LimitTry(BoundRuleset ruleset, Placement placement, Admitted admitted)
    {
        limits = [.. ruleset.Limits.Select(limit => (limit, admitted.PlaceOf(limit)))];
        row = placement.Row.Index;
        shift = placement.Judgement?.Shift ?? 0;
        judgement = placement.Judgement is { } place ? admitted.PlaceOf(place) : -1;
    }

    /// <summary>The tier after them.</summary>
    public int Apply(int before, ReadOnlySpan<bool> right, InferenceResult inferred, int last)
    {
        var (cap, floor) = (0, int.MaxValue);
        foreach (var (limit, place) in limits)
        {
            if ((place < 0 || right[place]) && inferred.Outcome(limit).Effective.Contains(row))
            {
                cap = limit.IsCap ? Math.Max(cap, limit.Tier.Index) : cap;
                floor = limit.IsCap ? floor : Math.Min(floor, limit.Tier.Index);
            }
        }

        var tier = Math.Max(Math.Min(before, Math.Max(floor, cap)), cap);
        return shift == 0 || (judgement >= 0 && !right[judgement]) ? tier : Math.Clamp(tier + shift, shift < 0 ? Math.Min(cap, tier) : 0, last);
    }
}
