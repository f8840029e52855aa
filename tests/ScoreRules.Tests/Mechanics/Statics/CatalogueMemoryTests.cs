using System.Runtime.CompilerServices;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Curves;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Statics;

/// <summary>A step needs no memory but its point.</summary>
public sealed class CatalogueMemoryTests
{
    private static readonly Mechanism[] All = [.. GeometryRows.All.Select(GeometryRows.Mechanism)];

    [Fact]
    public void More_steps_need_no_more_memory_than_their_points()
    {
        Allocated(61);
        var (few, many) = (Allocated(61), Allocated(6001));
        var points = 115L * 5940 * Unsafe.SizeOf<CurvePoint>();

        // The checks of the four bands list their lengths once more.
        (many - few).ShouldBeLessThan(points + (4L * 5940 * 48) + 100_000);
    }

    private static long Allocated(int steps)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        foreach (var mechanism in All)
        {
            StaticSolver.Solve(mechanism, steps);
        }

        return GC.GetAllocatedBytesForCurrentThread() - before;
    }
}
