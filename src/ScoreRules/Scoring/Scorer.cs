using System.Collections.Immutable;
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
            AddWeights(column, facts, totals);
        }

        foreach (var column in ordered)
        {
            AddPoints(column, facts, totals, criteria);
        }

        var awards = Awards(ruleset, inferred);
        return new ScoreTable(columns, totals, criteria, awards, [.. criteria.Zip(awards, (fromCriteria, fromAwards) => fromCriteria + fromAwards)]);
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
            weights[target.Index] = counts ? weight!.Weight : 0;
        }

        return new CriterionColumn(criterion, attributes, weights, Worth(criterion, attributes, facts), new double[facts.RowCount]);
    }

    private static bool CountsFor(StatementInfo info, TargetDefinition target)
    {
        var only = info.OnlyFor.Where(entry => entry.Target is not null).ToList();
        return (only.Count == 0 || only.Exists(entry => ScopeResolution.Covers(entry, target)))
            && !info.ExceptFor.Any(entry => ScopeResolution.Covers(entry, target));
    }

    private static double[] Worth(CriterionDefinition criterion, AttributeDefinition?[] attributes, FactTable facts)
    {
        var worth = new double[facts.RowCount];
        var skipped = SkippedMovements(criterion.Info);
        for (var row = 0; row < worth.Length; row++)
        {
            var placement = facts.Rows[row];
            worth[row] = attributes[placement.Target.Index] is { } attribute && (skipped is null || !skipped(placement.Movement.Name))
                ? Worth(criterion, facts, row, attribute)
                : double.NaN;
        }

        return worth;
    }

    private static Func<string, bool>? SkippedMovements(StatementInfo info)
    {
        var except = info.ExceptFor.Where(entry => entry.Movement is not null).Select(entry => NameText.Key(entry.Movement!)).ToHashSet(StringComparer.Ordinal);
        var only = info.OnlyFor.Where(entry => entry.Movement is not null).Select(entry => NameText.Key(entry.Movement!)).ToHashSet(StringComparer.Ordinal);
        return except.Count + only.Count == 0 ? null : name => except.Contains(NameText.Key(name)) || (only.Count > 0 && !only.Contains(NameText.Key(name)));
    }

    private static double Worth(CriterionDefinition criterion, FactTable facts, int row, AttributeDefinition attribute)
    {
        if (attribute.IsWord)
        {
            var fact = facts.Fact(row, attribute).Value;
            var worth = fact.IsKnown ? WorthCurve.Of(criterion.Worth, fact) : double.NaN;
            return double.IsNaN(worth) ? criterion.UnknownWorth ?? double.NaN : worth;
        }

        var number = facts.Numbers(attribute)[row];
        return double.IsNaN(number) ? criterion.UnknownWorth ?? double.NaN : WorthCurve.At(criterion.Worth, number);
    }

    private static void AddWeights(CriterionColumn column, FactTable facts, double[] totals)
    {
        for (var row = 0; row < totals.Length; row++)
        {
            totals[row] += double.IsNaN(column.Worth[row]) ? 0 : column.Weights[facts.Rows[row].Target.Index];
        }
    }

    private static void AddPoints(CriterionColumn column, FactTable facts, double[] totals, double[] sum)
    {
        for (var row = 0; row < totals.Length; row++)
        {
            var points = double.IsNaN(column.Worth[row]) ? 0 : 100 * column.Weights[facts.Rows[row].Target.Index] / totals[row] * column.Worth[row];
            column.Points[row] = points;
            sum[row] += points;
        }
    }

    private static double[] Awards(BoundRuleset ruleset, InferenceResult inferred)
    {
        var points = new double[inferred.Facts.RowCount];
        foreach (var award in ruleset.Awards.OrderBy(award => award.Points).ThenBy(award => award.Info.Title, StringComparer.Ordinal))
        {
            foreach (var row in inferred.Outcome(award).Effective)
            {
                points[row] += award.Points;
            }
        }

        return points;
    }
}
