namespace ScoreRules.Statistics.Agreement;

/// <summary>The sum of squares about its mean of any run of sorted values, from running sums about the mean of all.</summary>
internal sealed class RunSquares
{
    private readonly double[] counts;
    private readonly double[] sums;
    private readonly double[] squares;

    /// <summary>Takes groups of equal values, rising.</summary>
    public RunSquares(double[][] groups)
    {
        var mean = groups.SelectMany(group => group).Average();
        (counts, sums, squares) = (new double[groups.Length + 1], new double[groups.Length + 1], new double[groups.Length + 1]);
        for (var i = 0; i < groups.Length; i++)
        {
            var (size, value) = (groups[i].Length, groups[i][0] - mean);
            counts[i + 1] = counts[i] + size;
            sums[i + 1] = sums[i] + (size * value);
            squares[i + 1] = squares[i] + (size * value * value);
        }
    }

    /// <summary>The sum of squares of all values, against which rounding is judged.</summary>
    public double Scale => squares[^1];

    /// <summary>Of the groups from start up to, not including, end.</summary>
    public double Of(int start, int end)
    {
        var sum = sums[end] - sums[start];
        return end - start == 1 ? 0 : Math.Max(0, squares[end] - squares[start] - (sum * sum / (counts[end] - counts[start])));
    }
}
