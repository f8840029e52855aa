using System.Collections.Immutable;

namespace ScoreRules.Language.Binding;

/// <summary>How criteria compare in importance: by their order, or by comparisons of two at a time; never both.</summary>
/// <param name="Info">What the statement says about itself.</param>
/// <param name="Order">Criteria by name, the most important first; empty when they are compared.</param>
/// <param name="Comparisons">Comparisons, one a pair; empty when there is an order.</param>
public sealed record WeightsDefinition(StatementInfo Info, ImmutableArray<CriterionMention> Order, ImmutableArray<ImportanceComparison> Comparisons) : BoundStatement(Info)
{
    /// <summary>Names of all criteria it speaks of, each once, in the order of the text.</summary>
    public ImmutableArray<string> Criteria =>
        [.. Order.Select(mention => mention.Name).Concat(Comparisons.SelectMany(comparison => new[] { comparison.First, comparison.Second })).Distinct(StringComparer.Ordinal)];
}
