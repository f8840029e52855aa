using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Comparing;

/// <summary>A house told in the vocabulary of two houses. Cautions, refusals and expectations are left away: they move nothing.</summary>
internal sealed class Translation(SharedVocabulary vocabulary)
{
    /// <summary>The rules.</summary>
    public BoundRuleset Of(BoundRuleset ruleset) => ruleset with
    {
        Attributes = vocabulary.Attributes,
        Criteria = [.. ruleset.Criteria.Select(Of)],
        Calls = [.. ruleset.Calls.Select(call => call with { Condition = Of(call.Condition) })],
        Recipes = [.. ruleset.Recipes.Select(recipe => recipe with { Result = vocabulary.Of(recipe.Result), Steps = [.. recipe.Steps.Select(Of)] })],
        Awards = [.. ruleset.Awards.Select(award => award with { Condition = Of(award.Condition) })],
        Limits = [.. ruleset.Limits.Select(limit => limit with { Condition = Of(limit.Condition) })],
        Exclusions = [.. ruleset.Exclusions.Select(exclusion => exclusion with { Condition = Of(exclusion.Condition) })],
        Studies = [.. ruleset.Studies.Select(study => study with { Attribute = study.Attribute is null ? null : vocabulary.Of(study.Attribute) })],
        CancelOuts = [],
        Cautions = [],
        Refusals = [],
        Expectations = [],
        Profiles = [],
    };

    /// <summary>The movements.</summary>
    public MovementCatalogue Of(BoundRuleset ruleset, MovementCatalogue catalogue) => new([.. catalogue.Movements.Select(movement => Of(ruleset.Attributes, movement))]);

    private Movement Of(ImmutableArray<AttributeDefinition> attributes, Movement movement)
    {
        var facts = Enumerable.Repeat(CatalogueFact.NotSaid, vocabulary.Attributes.Length).ToArray();
        for (var i = 0; i < movement.Facts.Length; i++)
        {
            facts[vocabulary.Of(attributes[i]).Index] = Of(attributes[i], movement.Facts[i]);
        }

        var forTargets = movement.TargetFacts.ByAttribute.Select(pair =>
            KeyValuePair.Create((vocabulary.Of(attributes[pair.Key.Attribute]).Index, pair.Key.Target), Of(attributes[pair.Key.Attribute], pair.Value)));
        return movement with { Facts = [.. facts], TargetFacts = new TargetFacts(forTargets.ToImmutableDictionary()) };
    }

    private CatalogueFact Of(AttributeDefinition attribute, CatalogueFact fact) =>
        attribute.IsWord && fact.Value.IsKnown ? fact with { Value = fact.Value with { Codes = vocabulary.Codes(attribute, fact.Value.Codes) } } : fact;

    private CriterionDefinition Of(CriterionDefinition criterion) => criterion with
    {
        Readings = [.. criterion.Readings.Select(reading => reading with { Attribute = vocabulary.Of(reading.Attribute) })],
        Worth = criterion.Readings.FirstOrDefault(reading => reading.Attribute.IsWord)?.Attribute is { } words ? Of(words, criterion.Worth) : criterion.Worth,
    };

    private WorthFunction Of(AttributeDefinition attribute, WorthFunction worth)
    {
        if (worth.ByCode.IsDefaultOrEmpty)
        {
            return worth;
        }

        var byCode = Enumerable.Repeat(double.NaN, vocabulary.Of(attribute).Values.Length).ToArray();
        for (var code = 0; code < worth.ByCode.Length; code++)
        {
            byCode[vocabulary.Of(attribute).CodeOf(attribute.Values[code])] = worth.ByCode[code];
        }

        return worth with { ByCode = [.. byCode] };
    }

    private RecipeStep Of(RecipeStep step) => step with
    {
        Attribute = step.Attribute is null ? null : vocabulary.Of(step.Attribute),
        Condition = step.Condition is null ? null : Of(step.Condition),
    };

    private Condition Of(Condition condition) => condition switch
    {
        AttributeTest test => test with { Attribute = vocabulary.Of(test.Attribute), Codes = vocabulary.Codes(test.Attribute, test.Codes) },
        AllOf all => all with { Parts = [.. all.Parts.Select(Of)] },
        AnyOf any => any with { Parts = [.. any.Parts.Select(Of)] },
        Unless unless => unless with { Part = Of(unless.Part) },
        _ => condition,
    };
}
