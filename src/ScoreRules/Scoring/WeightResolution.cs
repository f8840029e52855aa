using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;
using ScoreRules.Weighting;

namespace ScoreRules.Scoring;

/// <summary>
/// Gives criteria that count <c>by weights</c> their weight. Criteria with a number of their own set the scale; without any,
/// the weights of a statement make 100.
/// </summary>
public static class WeightResolution
{
    private const double Whole = 100;

    /// <summary>The ruleset with all weights as numbers; reports those that cannot be found.</summary>
    public static BoundRuleset Resolve(BoundRuleset ruleset, DiagnosticBag findings)
    {
        if (ruleset.Weights.IsEmpty && ruleset.Criteria.All(criterion => criterion.Weights.All(weight => weight.Amount is not null)))
        {
            return ruleset;
        }

        var found = new Dictionary<string, (double Weight, WeightBasis Basis)>(StringComparer.Ordinal);
        var hasNumbers = ruleset.Criteria.Any(criterion => criterion.Weights.Any(weight => weight.Amount is not null));
        foreach (var statement in ruleset.Weights)
        {
            Add(statement, ruleset, hasNumbers, found, findings);
        }

        return ruleset with { Criteria = [.. ruleset.Criteria.Select(criterion => Fill(criterion, found, ruleset, findings))] };
    }

    private static void Add(WeightsDefinition statement, BoundRuleset ruleset, bool hasNumbers, Dictionary<string, (double Weight, WeightBasis Basis)> found, DiagnosticBag findings)
    {
        var names = statement.Criteria;
        var given = names.Select(name => NumberOf(name, ruleset)).ToArray();
        var comparisons = Comparisons(statement);
        WeightFindings.Check(statement, given, comparisons, findings);
        if (Values(statement, given, comparisons, hasNumbers, findings) is not { } values)
        {
            return;
        }

        for (var i = 0; i < names.Length; i++)
        {
            var basis = new WeightBasis(statement, statement.Order.IsEmpty ? 0 : i + 1, names.Length);
            if (!found.TryAdd(NameText.Key(names[i]), (values[i], basis)))
            {
                findings.Add(WeightFindings.Twice(names[i], statement, found[NameText.Key(names[i])].Basis.Source));
            }
        }
    }

    private static double[]? Values(WeightsDefinition statement, double[] given, PairwiseComparison[] comparisons, bool hasNumbers, DiagnosticBag findings)
    {
        var anchored = given.Any(double.IsFinite);
        if (!anchored && hasNumbers)
        {
            findings.Add(WeightFindings.WithoutScale(statement));
            return null;
        }

        if (!statement.Order.IsEmpty)
        {
            var centroid = RankOrderWeights.Centroid(given.Length);
            var scale = anchored ? Math.Exp(centroid.Zip(given).Where(pair => double.IsFinite(pair.Second)).Average(pair => Math.Log(pair.Second / pair.First))) : Whole;
            return [.. centroid.Select(share => share * scale)];
        }

        if (WeightFindings.Unjoined(statement, given, comparisons) is { } finding)
        {
            findings.Add(finding);
            return null;
        }

        return anchored ? LogLeastSquares.Anchored(given, comparisons) : [.. LogLeastSquares.Shares(given.Length, comparisons).Select(share => share * Whole)];
    }

    // By positions in the statement's list of criteria.
    private static PairwiseComparison[] Comparisons(WeightsDefinition statement)
    {
        var names = statement.Criteria;
        return [.. statement.Comparisons.Select(comparison => new PairwiseComparison(names.IndexOf(comparison.First), names.IndexOf(comparison.Second), comparison.Times))];
    }

    private static double NumberOf(string name, BoundRuleset ruleset) =>
        ruleset.Criteria.FirstOrDefault(criterion => NameText.Same(criterion.Name, name))?.Weights.FirstOrDefault(weight => weight.Targets.IsEmpty)?.Amount?.Number ?? double.NaN;

    private static CriterionDefinition Fill(CriterionDefinition criterion, Dictionary<string, (double Weight, WeightBasis Basis)> found, BoundRuleset ruleset, DiagnosticBag findings)
    {
        var weights = criterion.Weights.Select(weight => weight.Amount is null && found.TryGetValue(NameText.Key(criterion.Name), out var by)
            ? weight with { Amount = UncertainNumber.Certain(by.Weight), Basis = by.Basis } : weight).ToImmutableArray();
        if (!findings.HasErrors && weights.FirstOrDefault(weight => weight.Amount is null) is { } lacking && !ruleset.Weights.Any(statement => statement.Criteria.Contains(criterion.Name, StringComparer.Ordinal)))
        {
            findings.Add(WeightFindings.NotNamed(criterion, lacking));
        }

        return criterion with { Weights = weights };
    }
}
