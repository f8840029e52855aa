using static ScoreRules.Mechanics.Facts.Workings.Trapezoid;

namespace ScoreRules.Mechanics.Facts.Workings;

/// <summary>Numbers of one muscle: its practical lengths at each step, the load / peak at each step, and whether it is longer at the start.</summary>
internal static class MuscleNumbers
{
    private const double Half = 0.5;

    public static double? Mean(double[] lengths, double[]? load, bool isLongAtStart) => Trapezoid.Mean(lengths);

    public static double? Longest(double[] lengths, double[]? load, bool isLongAtStart) => lengths.Max();

    public static double? Excursion(double[] lengths, double[]? load, bool isLongAtStart) => lengths.Max() - lengths.Min();

    public static double? LoadedLength(double[] lengths, double[]? load, bool isLongAtStart) =>
        load is null ? null : MeanOfProduct(Third(load, isLongAtStart), Third(lengths, isLongAtStart));

    public static double? MomentWeighted(double[] lengths, double[]? load, bool isLongAtStart) =>
        load is null ? null : MeanOfProduct(load, lengths) / Trapezoid.Mean(load);

    public static double? LoadProfile(double[] lengths, double[]? load, bool isLongAtStart) =>
        load is null ? null : Trapezoid.Mean(Third(load, isLongAtStart));

    public static double? ShareOfLoad(double[] lengths, double[]? load, bool isLongAtStart) =>
        load is null ? null : Trapezoid.Mean(Third(load, isLongAtStart)) / (3 * Trapezoid.Mean(load));

    // Of several steps at the same greatest length (the practical range ends there) the one nearest to the long end counts.
    public static double? AtLongest(double[] lengths, double[]? load, bool isLongAtStart)
    {
        if (load is null)
        {
            return null;
        }

        var longest = lengths.Max();
        return load[isLongAtStart ? Array.IndexOf(lengths, longest) : Array.LastIndexOf(lengths, longest)];
    }

    public static double? LongestUnderLoad(double[] lengths, double[]? load, bool isLongAtStart)
    {
        if (load is null)
        {
            return null;
        }

        var longest = 0.0;
        for (var i = 0; i < lengths.Length; i++)
        {
            longest = load[i] >= Half ? Math.Max(longest, lengths[i]) : longest;
        }

        return longest;
    }
}
