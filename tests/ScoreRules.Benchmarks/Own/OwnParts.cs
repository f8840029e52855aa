using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

namespace ScoreRules.Benchmarks.Own;

/// <summary>Runs the benchmarks of our own parts, in this process: no project is generated and built for them.</summary>
internal static class OwnParts
{
    /// <summary>Runs all of them, or those of the statistics alone, and prints one table.</summary>
    public static void Run(bool statisticsOnly)
    {
        var job = Job.Default.WithToolchain(InProcessEmitToolchain.Instance).WithWarmupCount(5).WithIterationCount(15);
        var config = DefaultConfig.Instance.AddJob(job).AddColumn(StatisticColumn.Min, StatisticColumn.Median).WithOptions(ConfigOptions.JoinSummary);
        Type[] parts = statisticsOnly ? [typeof(StatisticsBenchmarks)] : [typeof(JudgingBenchmarks), typeof(ReadingBenchmarks), typeof(StatisticsBenchmarks)];
        BenchmarkSwitcher.FromTypes(parts).RunAll(config);
    }
}
