using System.Diagnostics;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Facts;
using ScoreRules.Mechanics.Muscles;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Tests.Mechanics.Statics;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Facts;

/// <summary>All mechanics of a catalogue must not be felt. Wide limits, because other work runs at the same time; the benchmarks measure.</summary>
public sealed class FactSpeedTests
{
    private static readonly Mechanism[] All = [.. GeometryRows.All.Select(GeometryRows.Mechanism)];

    [Fact]
    public void A_length_needs_no_memory()
    {
        var at = JointCoordinates.Of(Posture.Anatomical);
        var muscles = MuscleModel.Muscles;
        _ = muscles.Sum(muscle => muscle.LengthAt(at).Practical);
        var (before, sum) = (GC.GetAllocatedBytesForCurrentThread(), 0.0);
        for (var i = 0; i < 1000; i++)
        {
            foreach (var muscle in muscles)
            {
                sum += muscle.LengthAt(at).Practical;
            }
        }

        (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBe(0, $"{sum}");
    }

    [Fact]
    public void Lengths_of_32_muscles_at_61_postures_of_130_movements_take_well_under_a_second() =>
        Best("lengths", mechanism =>
        {
            var (start, end) = (JointAngles.Of(mechanism.Start), JointAngles.Of(mechanism.End));
            for (var step = 0; step <= 60; step++)
            {
                var at = JointCoordinates.Of(JointAngles.Between(start, end, step / 60.0));
                foreach (var muscle in MuscleModel.Muscles)
                {
                    muscle.LengthAt(at);
                }
            }
        }).ShouldBeLessThan(TimeSpan.FromMilliseconds(500));

    [Theory]
    [InlineData(false, 300)]
    [InlineData(true, 3000)]
    public void All_facts_of_130_movements_take_well_under_their_limit(bool withIntervals, int limit) =>
        Best($"facts, intervals {withIntervals}", mechanism => MovementFacts.Of(mechanism, Targets.Of(("triceps long head", 38), ("semimembranosus", 33), ("soleus", 57), ("pectoralis major sternocostal", 75)), new FactOptions { WithIntervals = withIntervals, AcceptsEvenLoad = true }))
            .ShouldBeLessThan(TimeSpan.FromMilliseconds(limit));

    private static TimeSpan Best(string name, Action<Mechanism> work)
    {
        var best = TimeSpan.MaxValue;
        for (var i = 0; i < 3; i++)
        {
            var watch = Stopwatch.StartNew();
            foreach (var mechanism in All)
            {
                work(mechanism);
            }

            best = watch.Elapsed < best ? watch.Elapsed : best;
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{name}: {best.TotalMilliseconds:0.0} ms");
        return best;
    }
}
