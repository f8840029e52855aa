using System.Collections.Immutable;
using ScoreRules.Catalogue;

namespace ScoreRules.Scoring;

/// <summary>Scores of all placements, by column, so that any part can be explained without being stored twice.</summary>
/// <param name="Criteria">What each criterion gives, in the order of the house.</param>
/// <param name="WeightTotals">By row: the total of the weights in force, as written.</param>
/// <param name="CriteriaPoints">By row: points from criteria, 0 to 100.</param>
/// <param name="AwardPoints">By row: points given less points taken.</param>
/// <param name="Principle">By row: the score on principle, before any evidence.</param>
public sealed record ScoreTable(
    ImmutableArray<CriterionColumn> Criteria,
    double[] WeightTotals,
    double[] CriteriaPoints,
    double[] AwardPoints,
    double[] Principle)
{
    /// <summary>Points that a criterion gives a row.</summary>
    public double PointsOf(CriterionColumn column, PlacementRow row) => column.PointsOf(row.Index, row.Target.Index, WeightTotals[row.Index]);
}
