using ScoreRules.Language.Binding;

namespace ScoreRules.Scoring;

/// <summary>What one criterion gives each placement. Points are not kept: they follow from weight, worth and the total of weights.</summary>
/// <param name="Criterion">The criterion.</param>
/// <param name="Attributes">The attribute read, by target index; null where the criterion does not count.</param>
/// <param name="Weights">Weight as written, by target index; 0 where the criterion does not count.</param>
/// <param name="Worth">Worth by row, 0 to 1; NaN where the criterion is left out for that row.</param>
public sealed record CriterionColumn(CriterionDefinition Criterion, AttributeDefinition?[] Attributes, double[] Weights, double[] Worth)
{
    /// <summary>Points of a row: weight as a share of all weights in force, times worth, times 100; 0 where left out.</summary>
    /// <param name="row">The row.</param>
    /// <param name="target">Index of its target.</param>
    /// <param name="total">The total of the weights in force for the row.</param>
    public double PointsOf(int row, int target, double total) => double.IsNaN(Worth[row]) ? 0 : 100 * Weights[target] / total * Worth[row];
}
