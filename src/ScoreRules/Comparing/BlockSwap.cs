using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Comparing;

/// <summary>Judges mixtures of two houses: some blocks of the new one, the rest of the old one. Each is judged as a whole.</summary>
internal sealed class BlockSwap
{
    private readonly Judgement seed;
    private readonly (BoundRuleset Rules, MovementCatalogue Movements) old;
    private readonly (BoundRuleset Rules, MovementCatalogue Movements) now;

    // What mechanics derives depends on these blocks only, and is worked out once for each mixture of them.
    private readonly Dictionary<(bool Person, bool Targets, bool Movements), Judgement> derived = [];

    /// <summary>Tells two houses in one vocabulary.</summary>
    public BlockSwap(Judgement old, Judgement now)
    {
        seed = old;
        var translation = new Translation(SharedVocabulary.Of(old.Ruleset, now.Ruleset));
        this.old = (translation.Of(old.Ruleset), translation.Of(old.Ruleset, old.Catalogue));
        this.now = (translation.Of(now.Ruleset), translation.Of(now.Ruleset, now.Catalogue));
    }

    /// <summary>The judgement of a mixture.</summary>
    /// <param name="blocks">The blocks taken from the new house.</param>
    public Judgement Judged(IReadOnlySet<RuleBlock> blocks)
    {
        var key = (blocks.Contains(RuleBlock.Person), blocks.Contains(RuleBlock.Targets), blocks.Contains(RuleBlock.Movements));
        var from = derived.GetValueOrDefault(key);
        var mixed = Mixed(blocks) with { House = from?.Ruleset.House ?? House(key.Item1), Targets = from?.Ruleset.Targets ?? Of(key.Item2).Targets };
        var judged = Judge.Again(from ?? seed with { Derived = null, Profile = null }, mixed, (key.Item3 ? now : old).Movements);
        derived.TryAdd(key, judged);
        return judged;
    }

    private BoundRuleset Of(bool isNew) => isNew ? now.Rules : old.Rules;

    private HouseHeader? House(bool isNew) => Of(isNew).House;

    private BoundRuleset Mixed(IReadOnlySet<RuleBlock> blocks)
    {
        var tiers = Of(blocks.Contains(RuleBlock.Tiers)).Tiers;
        return now.Rules with
        {
            Criteria = Of(blocks.Contains(RuleBlock.Criteria)).Criteria,
            Calls = Of(blocks.Contains(RuleBlock.CalledFacts)).Calls,
            Recipes = Of(blocks.Contains(RuleBlock.CalledFacts)).Recipes,
            Awards = Of(blocks.Contains(RuleBlock.Awards)).Awards,
            Limits = [.. Of(blocks.Contains(RuleBlock.Limits)).Limits.Select(limit => limit with { Tier = Counterpart(limit.Tier, tiers) })],
            Exclusions = Of(blocks.Contains(RuleBlock.Exclusions)).Exclusions,
            Places = Of(blocks.Contains(RuleBlock.Judgements)).Places,
            Evidence = Of(blocks.Contains(RuleBlock.Evidence)).Evidence,
            Studies = Of(blocks.Contains(RuleBlock.Evidence)).Studies,
            Tiers = tiers,
        };
    }

    // A limit that names a tier of the other house means the one of that name, or else the one at that place in the list.
    private static TierDefinition Counterpart(TierDefinition tier, ImmutableArray<TierDefinition> tiers) =>
        tiers.FirstOrDefault(other => NameText.Same(other.Name, tier.Name)) ?? tiers[Math.Min(tier.Index, tiers.Length - 1)];
}
