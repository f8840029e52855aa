using ScoreRules.Benchmarks.Workloads;
using ScoreRules.Fuzzing.Targets;
using Xunit;

namespace ScoreRules.Tests.Fuzzing;

/// <summary>A short run of what <c>tests/ScoreRules.Fuzzing</c> does at length: broken input, always the same, ends in findings.</summary>
public sealed class FuzzingTests
{
    private const ulong Seed = 20_310_504;

    public static TheoryData<string, int> Rounds { get; } = new() { { "parse", 3_000 }, { "house", 400 }, { "table", 6_000 } };

    [Theory]
    [MemberData(nameof(Rounds))]
    public void Broken_input_ends_in_findings(string target, int rounds)
    {
        var mutator = new Mutator(target == "table" ? Corpus.Tables : Corpus.Statements, new SeededNumbers(Seed));
        for (var round = 0; round < rounds; round++)
        {
            var text = mutator.Next();
            Feed(target, text);
        }
    }

    [Fact]
    public void What_once_failed_is_read_to_an_end()
    {
        foreach (var (target, text) in Corpus.Kept())
        {
            Feed(target, text);
        }
    }

    private static void Feed(string target, string text)
    {
        try
        {
            FuzzTargets.All[target](text);
        }
        catch (Exception exception)
        {
            throw new InvalidOperationException($"\"{target}\" does not read this:\n{text}", exception);
        }
    }
}
