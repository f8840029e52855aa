using ScoreRules.Statistics.Distributions;
using ScoreRules.Statistics.Solving;

namespace ScoreRules.Statistics.Sensitivity;

/// <summary>
/// The shares nearest to given ones, by least squares, that are 0 or more, sum to 1 and bring c w down to 0: max(0, w - m - n c), where m
/// keeps the sum for each n and n is the one slope that brings level. The slope is found by halving, then the answer anew from the shares
/// that stay above 0, in closed form, so that halving leaves no error.
/// </summary>
internal sealed class LevelProjection
{
    // A criterion on which the two are this near to level, against the one where they are furthest apart, counts as level.
    private const double Level = 1e-12;

    private readonly double[] weights;
    private readonly double[] leads;

    /// <summary>Takes shares and the lead c on each criterion, awards within; c w is above 0 and some shares bring it to 0.</summary>
    public LevelProjection(double[] weights, double[] leads)
    {
        this.weights = weights;
        var least = Level * leads.Max(Math.Abs);
        this.leads = [.. leads.Select(lead => Math.Abs(lead) < least ? 0 : lead)];
    }

    /// <summary>Finds the shares.</summary>
    public double[] Find()
    {
        var upper = 1.0;
        while (Gap(upper) > 0 && upper < 1e30)
        {
            upper *= 2;
        }

        var slope = Gap(0) > 0 ? Bisection.Falling(Gap, 0, upper) : 0;
        return OnSupport([.. Projected(slope).Index().Where(share => share.Item > 0).Select(share => share.Index)]);
    }

    private double Gap(double slope) => InnerProduct.Of(Projected(slope), leads);

    // The nearest shares to w - n c (Held, Wolfe and Crowder 1974, Mathematical Programming 6:62): m is the largest mean excess of the k largest.
    private double[] Projected(double slope)
    {
        double[] moved = [.. weights.Select((weight, k) => weight - (slope * leads[k]))];
        var (sum, most) = (0.0, double.NegativeInfinity);
        foreach (var (k, value) in moved.OrderDescending().Index())
        {
            sum += value;
            most = Math.Max(most, (sum - 1) / (k + 1));
        }

        return [.. moved.Select(value => Math.Max(0, value - most))];
    }

    private double[] OnSupport(int[] support)
    {
        var mean = support.Average(k => leads[k]);
        var excess = (support.Sum(k => weights[k]) - 1) / support.Length;
        var spread = support.Sum(k => (leads[k] - mean) * (leads[k] - mean));
        var slope = spread > 0 ? (support.Sum(k => (leads[k] - mean) * weights[k]) + mean) / spread : 0;
        var shares = new double[weights.Length];
        foreach (var k in support)
        {
            shares[k] = Math.Max(0, weights[k] - excess - (slope * (leads[k] - mean)));
        }

        return shares;
    }
}
