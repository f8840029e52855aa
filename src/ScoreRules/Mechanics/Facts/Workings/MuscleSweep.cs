using static ScoreRules.Mechanics.Facts.Workings.Trapezoid;

namespace ScoreRules.Mechanics.Facts.Workings;

/// <summary>One muscle over the steps of a movement. "Load" is moment / peak at each step, 0 where the load helps.</summary>
/// <param name="Lengths">Practical length at each step, 0 to 1.</param>
/// <param name="IsLongAtStart">Whether it is longer in the first third than in the last; also when it does not change.</param>
internal sealed record MuscleSweep(double[] Lengths, bool IsLongAtStart)
{
    private const double Half = 0.5;

    public double MeanLength => Mean(Lengths);

    public double Longest => Lengths.Max();

    public double Excursion => Lengths.Max() - Lengths.Min();

    public double LoadedLength(double[] load) => MeanOfProduct(Third(load, IsLongAtStart), Third(Lengths, IsLongAtStart));

    public double MomentWeightedLength(double[] load) => MeanOfProduct(load, Lengths) / Mean(load);

    public double LoadProfile(double[] load) => Mean(Third(load, IsLongAtStart));

    public double ShareOfLoad(double[] load) => LoadProfile(load) / (3 * Mean(load));

    // Of several steps at the same greatest length (the practical range ends there) the one nearest to the long end counts.
    public double LoadAtLongest(double[] load) => load[IsLongAtStart ? Array.IndexOf(Lengths, Longest) : Array.LastIndexOf(Lengths, Longest)];

    public double LongestUnderLoad(double[] load)
    {
        var longest = 0.0;
        for (var i = 0; i < Lengths.Length; i++)
        {
            longest = load[i] >= Half ? Math.Max(longest, Lengths[i]) : longest;
        }

        return longest;
    }
}
