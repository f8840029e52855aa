using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Facts;
using ScoreRules.Mechanics.Muscles;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Tests.Mechanics.Statics;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Facts;

/// <summary>All mechanics of a catalogue must not be felt: memory is held here, time is measured by the benchmarks (mechanics).</summary>
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
    public void A_movement_needs_no_more_memory_for_its_facts_than_a_few_arrays()
    {
        var options = new FactOptions { WithIntervals = false };
        _ = All.Count(mechanism => MovementFacts.Of(mechanism, Targets.Hamstrings, options).Values.IsEmpty);
        var before = GC.GetAllocatedBytesForCurrentThread();
        _ = All.Count(mechanism => MovementFacts.Of(mechanism, Targets.Hamstrings, options).Values.IsEmpty);

        // Measured: 35 kB a movement.
        ((GC.GetAllocatedBytesForCurrentThread() - before) / All.Length).ShouldBeLessThan(60_000);
    }
}
