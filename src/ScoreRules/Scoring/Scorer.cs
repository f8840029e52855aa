using System.Collections.Immutable;
using System.Numerics;
using ScoreRules.Catalogue;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Scoring;

/// <summary>
/// Scores placements on principle: criteria through their worth functions, weighted by normalised weights, plus points
/// given and taken. Sums run in the order of names, so that the order of rules never changes a digit.
/// </summary>
public static class Scorer
{
    /// <summary>Scores all rows.</summary>
    public static ScoreTable Score(BoundRuleset ruleset, InferenceResult inferred)
    {
        var facts = inferred.Facts;
        var columns = ruleset.Criteria.Select(criterion => Column(criterion, ruleset, facts)).ToImmutableArray();
        var ordered = columns.OrderBy(column => NameText.Key(column.Criterion.Name), StringComparer.Ordinal).ToList();
        var totals = new double[facts.RowCount];
        var criteria = new double[facts.RowCount];
        foreach (var column in ordered)
        {
            AddWeights(column, facts.TargetOfRow, totals);
        }

        foreach (var column in ordered)
        {
            AddPoints(column, facts.TargetOfRow, totals, criteria);
        }

        var awards = Awards(ruleset, inferred);
        return new ScoreTable(columns, totals, criteria, awards, Sum(criteria, awards));
    }

    private static CriterionColumn Column(CriterionDefinition criterion, BoundRuleset ruleset, FactTable facts)
    {
        var attributes = new AttributeDefinition?[ruleset.Targets.Length];
        var weights = new double[ruleset.Targets.Length];
        foreach (var target in ruleset.Targets)
        {
            var reading = ScopeResolution.For(target, criterion.Readings, line => line.Targets);
            var weight = ScopeResolution.For(target, criterion.Weights, line => line.Targets);
            var counts = reading is not null && weight is not null && CountsFor(criterion.Info, target);
            attributes[target.Index] = counts ? reading!.Attribute : null;
            weights[target.Index] = counts ? weight!.Amount?.Number ?? 0 : 0;
        }

        return new CriterionColumn(criterion, attributes, weights, new CriterionWorth(criterion, facts).Column(attributes));
    }

    private static bool CountsFor(StatementInfo info, TargetDefinition target)
    {
        var only = info.OnlyFor.Where(entry => entry.Target is not null).ToList();
        return (only.Count == 0 || only.Exists(entry => ScopeResolution.Covers(entry, target)))
            && !info.ExceptFor.Any(entry => ScopeResolution.Covers(entry, target));
    }

    private static void AddWeights(CriterionColumn column, int[] targets, double[] totals)
    {
        var (weights, worth) = (column.Weights, column.Worth);
        for (var row = 0; row < totals.Length; row++)
        {
            totals[row] += double.IsNaN(worth[row]) ? 0 : weights[targets[row]];
        }
    }

    private static void AddPoints(CriterionColumn column, int[] targets, double[] totals, double[] sum)
    {
        for (var row = 0; row < totals.Length; row++)
        {
            sum[row] += column.PointsOf(row, targets[row], totals[row]);
        }
    }

    private static double[] Awards(BoundRuleset ruleset, InferenceResult inferred)
    {
        var points = new double[inferred.Facts.RowCount];
        foreach (var award in ruleset.Awards.OrderBy(award => award.Points).ThenBy(award => award.Info.Title, StringComparer.Ordinal))
        {
            Give(award.Points, inferred.Outcome(award).Effective.Words, points);
        }

        return points;
    }

    private static void Give(double amount, ReadOnlySpan<ulong> rows, double[] points)
    {
        for (var i = 0; i < rows.Length; i++)
        {
            for (var word = rows[i]; word != 0; word &= word - 1)
            {
                points[(i << 6) + BitOperations.TrailingZeroCount(word)] += amount;
            }
        }
    }

    private static double[] Sum(double[] left, double[] right)
    {
        var sum = new double[left.Length];
        for (var row = 0; row < sum.Length; row++)
        {
            sum[row] = left[row] + right[row];
        }

        return sum;
    }
}
