using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;
using ScoreRules.Scoring;

namespace ScoreRules.Answers.Change;

/// <summary>
/// What the rules of a house read in one target, and what they ask of it. With statements named, only what these rest on, called facts
/// and recipes included; else all rules but cautions and refusals, which move no placement.
/// </summary>
internal sealed class ReadAttributes
{
    private readonly ILookup<int, AttributeTest> tests;
    private readonly ILookup<int, CriterionDefinition> criteria;

    /// <summary>Looks through the rules.</summary>
    /// <param name="ruleset">The house.</param>
    /// <param name="target">The target.</param>
    /// <param name="named">Statements to look at alone; default for all.</param>
    public ReadAttributes(BoundRuleset ruleset, TargetDefinition target, ImmutableArray<BoundStatement> named = default)
    {
        var own = named.IsDefault ? Acting(ruleset) : named.Select(statement => statement is CallDefinition call ? call.Condition : ((ConditionalStatement)statement).Condition);
        tests = own.Concat(Chained(ruleset)).SelectMany(ConditionWalk.Tests).OfType<AttributeTest>().ToLookup(test => test.Attribute.Index);
        criteria = ruleset.Criteria.Where(_ => named.IsDefault).Select(criterion => (criterion, ScopeResolution.For(target, criterion.Readings, line => line.Targets)?.Attribute))
            .Where(pair => pair.Attribute is not null).ToLookup(pair => pair.Attribute!.Index, pair => pair.criterion);
        var worked = ruleset.Recipes.SelectMany(recipe => recipe.Steps).Select(step => step.Attribute?.Index).OfType<int>().ToHashSet();
        All = [.. ruleset.Attributes.Where(attribute => IsGiven(attribute) && (tests.Contains(attribute.Index) || criteria.Contains(attribute.Index) || worked.Contains(attribute.Index)))];
    }

    /// <summary>Attributes that are read and that a movement states.</summary>
    public ImmutableArray<AttributeDefinition> All { get; }

    /// <summary>Tests of an attribute in conditions.</summary>
    public IEnumerable<AttributeTest> Tests(AttributeDefinition attribute) => tests[attribute.Index];

    /// <summary>Criteria that read an attribute.</summary>
    public IEnumerable<CriterionDefinition> Criteria(AttributeDefinition attribute) => criteria[attribute.Index];

    private static bool IsGiven(AttributeDefinition attribute) =>
        !attribute.IsDerived && !attribute.IsWorkedOut && !attribute.IsAboutThePerson && !NameText.Same(attribute.Name, WellKnownAttributes.Likeness);

    private static IEnumerable<Condition> Acting(BoundRuleset ruleset) =>
        ruleset.Awards.Concat<ConditionalStatement>(ruleset.Limits).Concat(ruleset.Exclusions).Select(rule => rule.Condition);

    private static IEnumerable<Condition> Chained(BoundRuleset ruleset) =>
        ruleset.Calls.Select(call => call.Condition).Concat(ruleset.Recipes.SelectMany(recipe => recipe.Steps).Select(step => step.Condition).OfType<Condition>());
}
