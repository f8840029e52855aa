using CsCheck;
using ScoreRules.Statistics.Beliefs;

namespace ScoreRules.Tests.Statistics;

/// <summary>Scores of things that lie in a space where likeness is exp(-distance), distance the sum over coordinates, and studies of them.</summary>
/// <param name="Prior">The scores before the studies; all with the same standard deviation.</param>
/// <param name="Studies">Studies of pairs.</param>
internal sealed record Worlds(ScorePrior Prior, IReadOnlyList<Observation> Studies)
{
    public static readonly Gen<Worlds> Any = In(Gen.Double[0, 1.5].Array[3].Array[3, 10]);

    /// <summary>No two things nearly the same.</summary>
    public static readonly Gen<Worlds> Apart = In(Gen.Double[0, 1.5].Array[3].Array[3, 10]
        .Where(places => Enumerable.Range(0, places.Length).All(i => Enumerable.Range(0, i).All(j => Likeness(places, i, j) < 0.98))));

    private static Gen<Worlds> In(Gen<double[][]> spaces) =>
        from places in spaces
        from means in Gen.Double[20, 90].Array[places.Length]
        from deviation in Gen.Double[1, 12]
        from studies in Study(places.Length).Array[0, 7]
        select new Worlds(ScorePrior.Of(means, [.. places.Select(_ => deviation)], (i, j) => Likeness(places, i, j)), studies);

    public ScoreBeliefs Posterior() => BeliefUpdate.Of(Prior, Studies).Posterior();

    public Worlds With(Observation study) => this with { Studies = [.. Studies, study] };

    private static Gen<Observation> Study(int count) =>
        from pair in Gen.Int[0, count - 1].Array[2].Where(pair => pair[0] != pair[1])
        from value in Gen.Double[-10, 20]
        from variance in Gen.Double[1, 80]
        from kind in Gen.Bool
        select kind ? Observation.Measured(pair[0], pair[1], value, variance) : Observation.AtLeast(pair[0], pair[1], Math.Abs(value), variance);

    private static double Likeness(double[][] places, int i, int j) => Math.Exp(-places[i].Zip(places[j], (a, b) => Math.Abs(a - b)).Sum());
}
