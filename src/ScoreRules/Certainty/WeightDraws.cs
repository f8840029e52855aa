using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Scoring;
using ScoreRules.Statistics.Draws;

namespace ScoreRules.Certainty;

/// <summary>
/// Draws the weights of a target inside what the authors admit: a number with its doubt by that doubt, weights by order uniformly over all
/// weights that agree with the order, a plain number as it is.
/// </summary>
internal sealed class WeightDraws
{
    private readonly double[] buffer;
    private readonly UncertainNumber[] stated;
    private readonly ImmutableArray<(int[] Places, OrderedWeights Source, double Total)> orders;

    private WeightDraws(UncertainNumber[] stated, ImmutableArray<(int[] Places, OrderedWeights Source, double Total)> orders) => (this.stated, this.orders, buffer) = (stated, orders, new double[stated.Length]);

    /// <summary>The weights of a target.</summary>
    /// <param name="columns">The criteria that count there.</param>
    /// <param name="target">The target.</param>
    public static WeightDraws Of(ImmutableArray<CriterionColumn> columns, TargetDefinition target)
    {
        var weights = columns.Select(column => ScopeResolution.For(target, column.Criterion.Weights, line => line.Targets)!).ToList();
        var byOrder = weights.Select((weight, place) => (Weight: weight, Place: place)).Where(pair => pair.Weight.Basis is { Rank: > 0 })
            .GroupBy(pair => pair.Weight.Basis!.Source, ReferenceEqualityComparer.Instance)
            .Select(group => group.OrderBy(pair => pair.Weight.Basis!.Rank).ToList())
            .Select(group => (group.Select(pair => pair.Place).ToArray(), OrderedWeights.Of([.. Enumerable.Range(0, group.Count).Select(i => (IReadOnlyList<int>)[i])]), group.Sum(pair => pair.Weight.Amount!.Number)));
        return new WeightDraws([.. weights.Select(weight => weight.Amount!)], [.. byOrder]);
    }

    /// <summary>Fills weights of 0 or more; they need not sum to 1.</summary>
    public void Next(Generator generator, Span<double> weights)
    {
        for (var i = 0; i < stated.Length; i++)
        {
            weights[i] = Math.Max(0, UncertainDraw.Next(stated[i], generator));
        }

        foreach (var (places, source, total) in orders)
        {
            var shares = buffer.AsSpan(0, places.Length);
            source.Next(generator, shares);
            for (var i = 0; i < places.Length; i++)
            {
                weights[places[i]] = shares[i] * total;
            }
        }
    }
}
