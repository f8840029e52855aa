using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Weighting;

namespace ScoreRules.Scoring;

/// <summary>The weights that one statement gives its criteria, for criteria with certain numbers.</summary>
internal static class StatementWeights
{
    private const double Whole = 100;

    /// <summary>A weight for each of the statement's criteria, in its order; null when there are none (which is reported).</summary>
    /// <param name="statement">The statement.</param>
    /// <param name="given">The numbers that its criteria have of their own.</param>
    /// <param name="hasNumbers">Whether any criterion of the house has a number.</param>
    /// <param name="findings">Where findings go.</param>
    public static double[]? Of(WeightsDefinition statement, IReadOnlyList<CriterionWeight?> given, bool hasNumbers, DiagnosticBag findings)
    {
        var numbers = given.Select(weight => weight?.Amount?.Number ?? double.NaN).ToArray();
        var comparisons = Comparisons(statement);
        WeightFindings.Check(statement, numbers, comparisons, findings);
        if (!numbers.Any(double.IsFinite) && hasNumbers)
        {
            findings.Add(WeightFindings.WithoutScale(statement));
            return null;
        }

        return statement.Order.IsEmpty ? Compared(statement, numbers, comparisons, findings) : Ordered(statement, given, numbers, findings);
    }

    private static double[] Ordered(WeightsDefinition statement, IReadOnlyList<CriterionWeight?> given, double[] numbers, DiagnosticBag findings)
    {
        var centroid = RankOrderWeights.Centroid(numbers.Length);
        var scale = numbers.Any(double.IsFinite) ? Math.Exp(centroid.Zip(numbers).Where(pair => double.IsFinite(pair.Second)).Average(pair => Math.Log(pair.Second / pair.First))) : Whole;
        double[] weights = [.. centroid.Select(share => share * scale)];
        OrderFindings.Check(statement, given, weights, findings);
        return weights;
    }

    private static double[]? Compared(WeightsDefinition statement, double[] numbers, PairwiseComparison[] comparisons, DiagnosticBag findings)
    {
        if (WeightFindings.Unjoined(statement, numbers, comparisons) is { } finding)
        {
            findings.Add(finding);
            return null;
        }

        return numbers.Any(double.IsFinite) ? LogLeastSquares.Anchored(numbers, comparisons) : [.. LogLeastSquares.Shares(numbers.Length, comparisons).Select(share => share * Whole)];
    }

    // By positions in the statement's list of criteria.
    private static PairwiseComparison[] Comparisons(WeightsDefinition statement)
    {
        var names = statement.Criteria;
        return [.. statement.Comparisons.Select(comparison => new PairwiseComparison(names.IndexOf(comparison.First), names.IndexOf(comparison.Second), comparison.Times))];
    }
}
