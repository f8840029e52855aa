using System.Diagnostics;
using System.Reflection;
using System.Runtime.CompilerServices;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Curves;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Statics;

/// <summary>A ranking may ask for every curve; a step needs no memory but its point.</summary>
public sealed class CatalogueSpeedTests
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

    [Fact]
    public void All_130_movements_are_worked_out_well_within_20_ms()
    {
        // A build for debugging is some eight times slower; the promise is about the one that ships.
        var limit = TimeSpan.FromMilliseconds(typeof(StaticSolver).Assembly.GetCustomAttribute<DebuggableAttribute>() is { IsJITOptimizerDisabled: true } ? 200 : 20);
        var best = TimeSpan.MaxValue;
        for (var i = 0; i < 20; i++)
        {
            var watch = Stopwatch.StartNew();
            foreach (var mechanism in All)
            {
                StaticSolver.Solve(mechanism);
            }

            best = watch.Elapsed < best ? watch.Elapsed : best;
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"130 movements: {best.TotalMilliseconds:0.00} ms");
        best.ShouldBeLessThan(limit);
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
