using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using ScoreRules.Benchmarks.Workloads;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Facts;
using ScoreRules.Mechanics.Muscles;
using ScoreRules.Mechanics.Statics;

namespace ScoreRules.Benchmarks.Own;

/// <summary>The mechanics of 130 lifts at 61 steps; moments alone are the baseline.</summary>
[MemoryDiagnoser]
public class MechanicsBenchmarks
{
    private readonly ImmutableArray<Mechanism> lifts = SomeLifts.All();

    private readonly MuscleTarget target = MuscleTarget.Of(
        new[] { "biceps brachii long head", "brachialis", "triceps long head", "triceps lateral head", "semimembranosus", "biceps femoris long head", "soleus", "gastrocnemius medial head", "deltoid acromial" }
            .Select(name => KeyValuePair.Create(name, 1.0)));

    /// <summary>Moment curves with their checks.</summary>
    [Benchmark(Baseline = true)]
    public int Moments() => lifts.Count(lift => StaticSolver.Solve(lift).Curve is not null);

    /// <summary>Lengths of all 32 muscles at each step.</summary>
    [Benchmark]
    public double LengthsOfAllMuscles()
    {
        var sum = 0.0;
        foreach (var lift in lifts)
        {
            var (start, end) = (JointAngles.Of(lift.Start), JointAngles.Of(lift.End));
            for (var step = 0; step <= 60; step++)
            {
                var at = JointCoordinates.Of(JointAngles.Between(start, end, step / 60.0));
                foreach (var muscle in MuscleModel.Muscles)
                {
                    sum += muscle.LengthAt(at).Practical;
                }
            }
        }

        return sum;
    }

    /// <summary>All facts for one target each, without intervals.</summary>
    [Benchmark]
    public int Facts() => lifts.Count(lift => MovementFacts.Of(lift, target, new FactOptions { WithIntervals = false })["load profile"].Value is not null);

    /// <summary>All facts for one target each, with intervals.</summary>
    [Benchmark]
    public int FactsWithIntervals() => lifts.Count(lift => MovementFacts.Of(lift, target)["load profile"].Interval is not null);
}
