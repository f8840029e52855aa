using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Certainty;

/// <summary>Limits and a judgement by a tier, as far as they are in force in a try: the lowest cap, the highest floor, the cap first.</summary>
internal sealed class LimitTry
{
    private readonly (LimitDefinition Limit, int Place, bool AsksWho)[] limits;
    private readonly int position;
    private readonly int shift;
    private readonly int judgement;

    /// <summary>The limits of a house for a placement.</summary>
    /// <param name="ruleset">The house.</param>
    /// <param name="placement">The placement.</param>
    /// <param name="position">Its position among the rows of which it is told where limits act.</param>
    /// <param name="admitted">The doubtful statements.</param>
    public LimitTry(BoundRuleset ruleset, Placement placement, int position, Admitted admitted)
    {
        this.position = position;
        limits = [.. ruleset.Limits.Select(limit => (limit, admitted.PlaceOf(limit), ConditionWalk.AsksWho(limit.Condition)))];
        shift = placement.Judgement?.Shift ?? 0;
        judgement = placement.Judgement is { } place ? admitted.PlaceOf(place) : -1;
    }

    /// <summary>The tier after them.</summary>
    /// <param name="before">The tier that points give.</param>
    /// <param name="right">Which doubtful statements are in force.</param>
    /// <param name="acting">By limit and position: whether it acts there.</param>
    /// <param name="last">The worst tier.</param>
    public int Apply(int before, ReadOnlySpan<bool> right, bool[][] acting, int last)
    {
        var (cap, highest, floor) = (0, 0, int.MaxValue);
        for (var i = 0; i < limits.Length; i++)
        {
            var (limit, place, asksWho) = limits[i];
            if ((place < 0 || right[place]) && acting[i][position])
            {
                cap = limit.IsCap ? Math.Max(cap, limit.Tier.Index) : cap;
                highest = limit.IsCap && asksWho ? Math.Max(highest, limit.Tier.Index) : highest;
                floor = limit.IsCap ? floor : Math.Min(floor, limit.Tier.Index);
            }
        }

        var tier = Math.Max(Math.Min(before, Math.Max(floor, cap)), cap);
        return shift == 0 || (judgement >= 0 && !right[judgement]) ? tier : JudgementRule.Shifted(tier, shift, highest, last);
    }
}
