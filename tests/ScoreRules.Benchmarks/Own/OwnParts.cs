using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

namespace ScoreRules.Benchmarks.Own;

/// <summary>Runs the benchmarks of our own parts, in this process: no project is generated and built for them.</summary>
internal static class OwnParts
{
    /// <summary>All of them.</summary>
    public static Type[] All { get; } = [typeof(JudgingBenchmarks), typeof(ReadingBenchmarks), typeof(MechanicsBenchmarks), typeof(StatisticsBenchmarks), typeof(GuardingBenchmarks)];

    /// <summary>Runs some of them and prints one table.</summary>
    /// <param name="benchmarks">Which.</param>
    public static void Run(params Type[] benchmarks)
    {
        var job = Job.Default.WithToolchain(InProcessEmitToolchain.Instance).WithWarmupCount(5).WithIterationCount(15);
        var config = DefaultConfig.Instance.AddJob(job).AddColumn(StatisticColumn.Min, StatisticColumn.Median).WithOptions(ConfigOptions.JoinSummary);
        BenchmarkSwitcher.FromTypes(benchmarks).RunAll(config);
    }
}
