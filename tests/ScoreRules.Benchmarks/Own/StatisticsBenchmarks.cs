using BenchmarkDotNet.Attributes;
using ScoreRules.Statistics.Beliefs;
using ScoreRules.Statistics.Draws;

namespace ScoreRules.Benchmarks.Own;

/// <summary>Beliefs after studies, and draws over the weights.</summary>
[MemoryDiagnoser]
public class StatisticsBenchmarks
{
    private BeliefUpdate catalogue = null!;
    private (ScorePrior Prior, Observation[] Studies) small;
    private (ScorePrior Prior, Observation[] Studies) large;
    private DrawPlan weightsOnly = null!;
    private DrawPlan everything = null!;

    /// <summary>Prepares invented scores in a space of twelve attributes.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        small = World(130, 40);
        large = World(2_000, 500);
        catalogue = BeliefUpdate.Of(small.Prior, small.Studies);
        var generator = new Generator(3);
        double[][] values = [.. Enumerable.Range(0, 130).Select(_ => Numbers(generator, 15, 100))];
        var weights = DirichletWeights.About(Numbers(generator, 15, 20), 60);
        var beliefs = catalogue.Posterior();
        weightsOnly = DrawPlan.Of(weights, values);
        everything = DrawPlan.Of(weights, values, steps:
        [
            new EvidenceStep(catalogue),
            BeliefNoiseStep.Of(130, beliefs.Covariance),
            new HeldOrderStep(HeldOrders.Of(130, beliefs.Covariance, [new(0, 1, 0), new(2, 3, 1), new(4, 5, 0)])),
        ]);
    }

    /// <summary>130 movements, 40 studies: means, pulls and variances, from nothing.</summary>
    [Benchmark]
    public double Beliefs130With40() => Judge(small);

    /// <summary>2,000 movements, 500 studies: the same.</summary>
    [Benchmark]
    public double Beliefs2000With500() => Judge(large);

    /// <summary>10,000 draws of 15 weights over 130 movements: ranks and tiers.</summary>
    [Benchmark]
    public double DrawWeights() => Draw(weightsOnly);

    /// <summary>The same with 40 studies, the doubt that they leave and three held orders in every draw.</summary>
    [Benchmark]
    public double DrawEverything() => Draw(everything);

    private static double Draw(DrawPlan plan)
    {
        var (ranks, tiers) = (new RankTally(130, 15), new TierTally(130, [70, 60, 50, 40]));
        plan.Run(10_000, 1, [ranks, tiers]);
        return ranks.Acceptability(0, 0) + tiers.Share(0, 0);
    }

    private static double Judge((ScorePrior Prior, Observation[] Studies) world)
    {
        var beliefs = BeliefUpdate.Of(world.Prior, world.Studies).Posterior();
        var sum = 0.0;
        for (var i = 0; i < world.Prior.Count; i++)
        {
            sum += beliefs.Variance(i);
            for (var study = 0; study < world.Studies.Length; study++)
            {
                sum += beliefs.Pull(study, i);
            }
        }

        return sum;
    }

    // Half of the studies measure, half say "at least"; likeness exp(-6 d), d the mean difference over the attributes.
    private static (ScorePrior Prior, Observation[] Studies) World(int movements, int studies)
    {
        var generator = new Generator(2);
        double[][] places = [.. Enumerable.Range(0, movements).Select(_ => Numbers(generator, 12, 1))];
        var prior = ScorePrior.Of(Numbers(generator, movements, 100), [.. Enumerable.Repeat(5.0, movements)], (i, j) => Likeness(places[i], places[j]));
        return (prior, [.. Enumerable.Range(0, studies).Select(study => Study(generator, movements, study))]);
    }

    private static Observation Study(Generator generator, int movements, int study)
    {
        var first = (int)(generator.NextUniform() * movements);
        var second = (first + 1 + (int)(generator.NextUniform() * (movements - 1))) % movements;
        return study % 2 == 0 ? Observation.Measured(first, second, 4, 25) : Observation.AtLeast(first, second, 4, 25);
    }

    private static double[] Numbers(Generator generator, int count, double most) => [.. Enumerable.Range(0, count).Select(_ => most * generator.NextUniform())];

    private static double Likeness(double[] first, double[] second)
    {
        var sum = 0.0;
        for (var k = 0; k < first.Length; k++)
        {
            sum += Math.Abs(first[k] - second[k]);
        }

        return Math.Exp(-6 * sum / first.Length);
    }
}
