using System.Collections.Immutable;

namespace ScoreRules.Mechanics.Statics.Loads;

/// <summary>Measured pairs joined by straight lines.</summary>
/// <param name="Points">At least one pair, rising in the first number.</param>
public sealed record PiecewiseLinear(ImmutableArray<(double At, double Value)> Points)
{
    /// <summary>Whether a place lies between the first and the last pair.</summary>
    /// <param name="at">The place.</param>
    public bool Covers(double at) => at >= Points[0].At && at <= Points[^1].At;

    /// <summary>Value at a place; outside the pairs the nearest one is kept, which the checks report.</summary>
    /// <param name="at">The place.</param>
    public double Of(double at)
    {
        var next = 0;
        while (next < Points.Length && Points[next].At < at)
        {
            next++;
        }

        if (next == 0 || next == Points.Length)
        {
            return Points[Math.Min(next, Points.Length - 1)].Value;
        }

        var (low, high) = (Points[next - 1], Points[next]);
        return low.Value + ((at - low.At) / (high.At - low.At) * (high.Value - low.Value));
    }
}
