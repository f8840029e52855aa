namespace ScoreRules.Statistics.Agreement;

/// <summary>
/// Values in classes that are as even in themselves as can be: the least sum of squares about the class means over all ways to cut the
/// sorted values (Fisher 1958, Journal of the American Statistical Association 53:789; Jenks and Caspall 1971, Annals of the Association of
/// American Geographers 61:217). Exact, by dynamic programming. Equal values stay together; of equally good ways the one with the
/// lowest borders is taken.
/// </summary>
/// <param name="Classes">The values of each class, rising.</param>
/// <param name="SumOfSquares">The least sum of squares within classes.</param>
/// <param name="GoodnessOfFit">1 - that over the sum of squares about the mean of all; 1 when all values are equal.</param>
public sealed record NaturalBreaks(IReadOnlyList<IReadOnlyList<double>> Classes, double SumOfSquares, double GoodnessOfFit)
{
    /// <summary>Classes values.</summary>
    /// <param name="values">Numbers, in any order.</param>
    /// <param name="count">How many classes, 1 or more and no more than there are different values.</param>
    /// <exception cref="StatisticsInputException">No numbers, or more classes than different values.</exception>
    public static NaturalBreaks Of(IReadOnlyList<double> values, int count)
    {
        double[][] distinct = [.. values.Select(value => Require.Finite(value, "A value")).GroupBy(value => value).OrderBy(group => group.Key).Select(group => group.ToArray())];
        Require.AtLeast(count, 1, "The number of classes");
        Require.AtLeast(distinct.Length, count, "The number of different values for so many classes");
        var squares = new RunSquares(distinct);
        var starts = BestStarts(squares, distinct.Length, count, out var within);
        var classes = new IReadOnlyList<double>[count];
        for (var (k, end) = (count - 1, distinct.Length); k >= 0; end = starts[k][end], k--)
        {
            classes[k] = [.. distinct[starts[k][end]..end].SelectMany(group => group)];
        }

        var total = squares.Of(0, distinct.Length);
        return new NaturalBreaks(classes, within, total > 0 ? 1 - (within / total) : 1);
    }

    // starts[k][end]: where the last of k + 1 classes over the first values up to end begins.
    private static int[][] BestStarts(RunSquares squares, int length, int count, out double within)
    {
        var starts = new int[count][];
        var costs = Enumerable.Range(0, length + 1).Select(end => end == 0 ? double.PositiveInfinity : squares.Of(0, end)).ToArray();
        starts[0] = new int[length + 1];
        for (var k = 1; k < count; k++)
        {
            starts[k] = new int[length + 1];
            var next = Enumerable.Repeat(double.PositiveInfinity, length + 1).ToArray();
            for (var end = k + 1; end <= length; end++)
            {
                for (var start = k; start < end; start++)
                {
                    var cost = costs[start] + squares.Of(start, end);
                    if (cost < next[end] - (1e-12 * squares.Scale))
                    {
                        (next[end], starts[k][end]) = (cost, start);
                    }
                }
            }

            costs = next;
        }

        within = costs[length];
        return starts;
    }
}
