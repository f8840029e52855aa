using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Evidence;
using ScoreRules.Language.Binding;
using ScoreRules.Scoring;
using ScoreRules.Statistics.Draws;

namespace ScoreRules.Certainty;

/// <summary>Worths of a target's movements on its criteria, and their points under drawn weights. A worth that stands for something unknown is drawn from the whole range of the criterion's worths.</summary>
internal sealed class CriterionTable
{
    private readonly double[][] worths;
    private readonly (int Movement, int Criterion, double Low, double High)[] unknown;
    private readonly int[] places;
    private readonly WeightDraws weights;
    private readonly double[] drawn;
    private readonly double[] all;

    private CriterionTable(double[][] worths, (int Movement, int Criterion, double Low, double High)[] unknown, int[] places, WeightDraws weights)
    {
        (this.worths, this.unknown, this.places, this.weights) = (worths, unknown, places, weights);
        (drawn, all) = (new double[places.Length], new double[places.Length]);
    }

    /// <summary>The table of a target.</summary>
    public static CriterionTable Of(Judgement judgement, ScoreTable scores, TargetEvidence evidence, Admitted admitted)
    {
        ImmutableArray<CriterionColumn> columns = [.. scores.Criteria.Where(column => column.Attributes[evidence.Target.Index] is not null)];
        var facts = judgement.Inferred!.Facts;
        var open = from movement in Enumerable.Range(0, evidence.Rows.Length)
                      from criterion in Enumerable.Range(0, columns.Length)
                      where !double.IsNaN(columns[criterion].Worth[evidence.Rows[movement].Index]) && IsUnknown(columns[criterion], facts, evidence.Rows[movement])
                      let range = Range(columns[criterion].Criterion.Worth)
                      select (movement, criterion, range.Low, range.High);
        return new CriterionTable(
            [.. evidence.Rows.Select(row => columns.Select(column => column.Worth[row.Index]).ToArray())], [.. open],
            [.. columns.Select(column => admitted.PlaceOf(column.Criterion))], WeightDraws.Of(columns, evidence.Target));
    }

    /// <summary>Fills scores with points from criteria.</summary>
    public void Fill(Generator generator, ReadOnlySpan<bool> right, double[] scores)
    {
        weights.Next(generator, all);
        for (var k = 0; k < all.Length; k++)
        {
            drawn[k] = places[k] < 0 || right[places[k]] ? all[k] : 0;
        }

        foreach (var (movement, criterion, low, high) in unknown)
        {
            worths[movement][criterion] = low + ((high - low) * generator.NextUniform());
        }

        for (var i = 0; i < scores.Length; i++)
        {
            scores[i] = Points(worths[i], drawn) ?? Points(worths[i], all) ?? 0;
        }
    }

    // Null when no criterion with weight counts for the movement.
    private static double? Points(double[] worth, double[] weight)
    {
        var (sum, total) = (0.0, 0.0);
        for (var k = 0; k < worth.Length; k++)
        {
            if (!double.IsNaN(worth[k]))
            {
                sum += weight[k] * worth[k];
                total += weight[k];
            }
        }

        return total > 0 ? 100 * sum / total : null;
    }

    private static bool IsUnknown(CriterionColumn column, FactTable facts, PlacementRow row) => !facts.Fact(row.Index, column.Attributes[row.Target.Index]!).Value.IsKnown;

    private static (double Low, double High) Range(WorthFunction worth)
    {
        var values = worth.Points.IsEmpty ? worth.ByCode.Where(value => !double.IsNaN(value)).ToList() : [.. worth.Points.Select(point => point.Worth)];
        return (values.Min(), values.Max());
    }
}
