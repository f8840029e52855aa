using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.Firmness;

/// <summary>Rulesets in which one criterion has another weight in one target.</summary>
internal static class Reweighting
{
    /// <summary>The house with that weight.</summary>
    /// <param name="ruleset">The house.</param>
    /// <param name="criterion">One of its criteria.</param>
    /// <param name="target">The target.</param>
    /// <param name="weight">The weight, as it would be written.</param>
    public static BoundRuleset With(BoundRuleset ruleset, CriterionDefinition criterion, TargetDefinition target, double weight)
    {
        // The line for the smallest target wins, and of two such lines the first.
        ImmutableArray<CriterionWeight> weights = [new CriterionWeight(UncertainNumber.Certain(weight), [target], criterion.Info.Location), .. criterion.Weights];
        return ruleset with { Criteria = [.. ruleset.Criteria.Select(one => ReferenceEquals(one, criterion) ? one with { Weights = weights } : one)] };
    }
}
