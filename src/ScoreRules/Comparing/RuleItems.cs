using ScoreRules.Language;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Comparing;

/// <summary>The rules of a house as things to compare. Cautions are compared apart; what only words or shows things is not compared.</summary>
internal static class RuleItems
{
    /// <summary>All rules, by block.</summary>
    public static IEnumerable<ComparedItem> Of(BoundRuleset ruleset) =>
    [
        .. Person(ruleset.House),
        .. ruleset.Targets.Select(target => Item(RuleBlock.Targets, target, $"{Saying.Joined(target.Muscles.Select(muscle => $"{NameText.Key(muscle.Muscle)}:{Saying.Of(muscle.Share)}"))} {NameText.Key(target.Benchmark)} {NameText.Key(target.Parent ?? "")}")),
        .. ruleset.Criteria.Select(criterion => Item(RuleBlock.Criteria, criterion, Says(criterion))),
        .. ruleset.Calls.Select(call => Item(RuleBlock.CalledFacts, call, Saying.Of(call.Condition))),
        .. ruleset.Recipes.Select(recipe => Item(RuleBlock.CalledFacts, recipe, Saying.Joined(recipe.Steps.Select(Says)))),
        .. ruleset.Awards.Select(award => Item(RuleBlock.Awards, award, $"{Saying.Of(award.Amount)} {Saying.Of(award.Condition)}")),
        .. ruleset.Limits.Select(limit => Item(RuleBlock.Limits, limit, $"{limit.IsCap} {limit.Tier.Index} {Saying.Of(limit.Condition)}")),
        .. ruleset.Exclusions.Select(exclusion => Item(RuleBlock.Exclusions, exclusion, $"{Saying.Joined(exclusion.Movements.Select(NameText.Key).Order(StringComparer.Ordinal))} {Saying.Of(exclusion.Condition)}")),
        .. ruleset.Tiers.Select(Tier),
        .. ruleset.Places.Select(place => Item(RuleBlock.Judgements, place, $"{place.Kind} {NameText.Key(place.Movement)} {NameText.Key(place.Other ?? "")}")),
        .. StudyItems.Of(ruleset),
    ];

    // What nobody named is known by what it says. The place is where a house that builds on another changed it, else where it stands.
    private static ComparedItem Item(RuleBlock block, BoundStatement statement, string says)
    {
        var (info, all) = (statement.Info, $"{says}, {Saying.Of(statement.Info)}");
        var about = info.Name is { } name ? NameText.Key(name) : statement is PlaceDefinition place ? NameText.Key(place.Movement) : all;
        return new ComparedItem(block, $"{block} {info.Kind} {about}", all, Title(statement), info.Amendments.LastOrDefault()?.Place ?? info.Location) { Statement = statement };
    }

    private static string Title(BoundStatement statement) => statement is PlaceDefinition place ? $"place \"{place.Movement}\"" : statement.Info.Title;

    // Names of tiers move nothing: a tier is known by its place in the list.
    private static ComparedItem Tier(TierDefinition tier) =>
        new(RuleBlock.Tiers, $"tier {Saying.Of(tier.Index)}", $"{tier.Cut} {Saying.Of(tier.Cut == TierCut.Rest ? 0 : tier.Amount)}", $"tier \"{tier.Name}\"", tier.Location);

    private static IEnumerable<ComparedItem> Person(HouseHeader? house)
    {
        if (house is not null)
        {
            var person = house.Person is { } own ? $"{Saying.Of(own.Kilograms)} {Saying.Of(own.Metres)} {own.IsFemale}" : "";
            yield return new ComparedItem(RuleBlock.Person, "person", $"{house.AcceptsEvenLoad} {person}", "the person and loads assumed", house.Person?.Location ?? house.Info.Location);
        }
    }

    private static string Says(CriterionDefinition criterion) => Saying.Joined(
    [
        .. criterion.Weights.Select(weight => $"{Saying.Of(weight.Amount)} for {Saying.Of(weight.Targets)}"),
        .. criterion.Readings.Select(reading => $"{NameText.Key(reading.Attribute.Name)} for {Saying.Of(reading.Targets)}"),
        Saying.Of(criterion.Worth, criterion.Readings.FirstOrDefault()?.Attribute),
        criterion.UnknownWorth is { } unknown ? Saying.Of(unknown) : "",
    ]);

    private static string Says(RecipeStep step) => $"{step.Operation} {Saying.Of(step.Number)} {NameText.Key(step.Attribute?.Name ?? "")} when {Saying.Of(step.Condition)}";
}
