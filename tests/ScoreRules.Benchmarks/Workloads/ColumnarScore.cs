using System.Numerics;

namespace ScoreRules.Benchmarks.Workloads;

/// <summary>Scores in plain loops: worth by lines between points, weights as shares, then points given and taken.</summary>
/// <param name="rules">The rules.</param>
/// <param name="rows">The movements.</param>
internal sealed class ColumnarScore(RuleBase rules, Rows rows)
{
    /// <summary>The scores, given where each rule acts.</summary>
    public double[] Run(ulong[][] held)
    {
        var scores = new double[rows.Count];
        var total = rules.Criteria.Sum(criterion => criterion.Weight);
        foreach (var criterion in rules.Criteria)
        {
            Add(criterion, total, scores);
        }

        var awards = new double[rows.Count];
        for (var i = 0; i < held.Length; i++)
        {
            if (rules.Rules[i].Points != 0)
            {
                Give(rules.Rules[i].Points, held[i], awards);
            }
        }

        for (var row = 0; row < scores.Length; row++)
        {
            scores[row] += awards[row];
        }

        return scores;
    }

    private void Add(WorkloadCriterion criterion, double total, double[] scores)
    {
        var column = rows.Columns[criterion.Attribute];
        var points = criterion.Points.Select(point => (point.At, Worth: point.Percent / 100.0)).ToArray();
        for (var row = 0; row < scores.Length; row++)
        {
            scores[row] += 100 * criterion.Weight / total * Worth(points, column[row]);
        }
    }

    private static double Worth((double At, double Worth)[] points, double value)
    {
        if (value <= points[0].At)
        {
            return points[0].Worth;
        }

        for (var i = 1; i < points.Length; i++)
        {
            if (value < points[i].At)
            {
                var (low, high) = (points[i - 1], points[i]);
                return low.Worth + ((high.Worth - low.Worth) * (value - low.At) / (high.At - low.At));
            }
        }

        return points[^1].Worth;
    }

    private static void Give(double points, ulong[] held, double[] awards)
    {
        for (var i = 0; i < held.Length; i++)
        {
            for (var word = held[i]; word != 0; word &= word - 1)
            {
                awards[(i << 6) + BitOperations.TrailingZeroCount(word)] += points;
            }
        }
    }
}
