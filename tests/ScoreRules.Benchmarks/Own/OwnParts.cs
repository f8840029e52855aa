using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

namespace ScoreRules.Benchmarks.Own;

/// <summary>Runs the benchmarks of our own parts, in this process: no project is generated and built for them.</summary>
internal static class OwnParts
{
    /// <summary>Runs all of them and prints one table.</summary>
    public static void Run()
    {
        var job = Job.Default.WithToolchain(InProcessEmitToolchain.Instance).WithWarmupCount(5).WithIterationCount(15);
        var config = DefaultConfig.Instance.AddJob(job).AddColumn(StatisticColumn.Min, StatisticColumn.Median).WithOptions(ConfigOptions.JoinSummary);
        BenchmarkSwitcher.FromTypes([typeof(JudgingBenchmarks), typeof(ReadingBenchmarks)]).RunAll(config);
    }
}
