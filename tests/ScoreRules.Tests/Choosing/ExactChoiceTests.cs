using System.Collections.Immutable;
using System.Text.Json;
using ScoreRules.Choosing;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Choosing;

public sealed class ExactChoiceTests
{
    /// <summary>Weighted maximum coverage by exhaustive enumeration; Reference/coverage.json names the source of each case.</summary>
    [Fact]
    public void Coverage_is_that_of_trying_every_choice()
    {
        using var file = JsonDocument.Parse(File.ReadAllText(Repository.PathOf("tests", "ScoreRules.Tests", "Reference", "coverage.json")));
        foreach (var one in file.RootElement.GetProperty("cases").EnumerateArray())
        {
            var names = one.GetProperty("sets").EnumerateObject().Select(set => set.Name).ToList();
            var problem = Coverage(one);
            var best = ExactChoice.Best(problem)!.Value;
            problem.Value(best).ShouldBe(one.GetProperty("optimum").GetInt64());
            one.GetProperty("optimal_sets").EnumerateArray().Select(set => string.Join(' ', set.EnumerateArray().Select(name => name.GetString()).Order(StringComparer.Ordinal)))
                .ShouldContain(string.Join(' ', best.Select(candidate => names[candidate]).Order(StringComparer.Ordinal)));
            problem.Value(OneByOne.Take(problem)).ShouldBe(one.GetProperty("greedy_value").GetInt64());
        }
    }

    [Fact]
    public void Small_choices_are_those_of_trying_every_subset_ties_included()
    {
        var none = 0;
        for (var seed = 0; seed < 150; seed++)
        {
            var problem = SmallProblem.Of(seed);
            var (expected, found) = (SmallProblem.Best(problem), ExactChoice.Best(problem));
            (found is { } taken ? string.Join(' ', taken) : "none").ShouldBe(expected is null ? "none" : string.Join(' ', expected), $"seed {seed}");
            none += expected is null ? 1 : 0;
        }

        none.ShouldBeInRange(5, 120);
    }

    [Fact]
    public void What_is_in_the_way_makes_a_choice_possible_when_taken_away_and_nothing_else_does()
    {
        foreach (var problem in Enumerable.Range(0, 60).Select(SmallProblem.Of).Where(problem => SmallProblem.Best(problem) is null))
        {
            var obstacle = Obstacle.Of(problem);
            obstacle.Alone.Select(found => found.Limit.Kind).ShouldBe(problem.Limits.Where(limit => SmallProblem.Best(problem.Without(limit)) is not null).Select(limit => limit.Kind));
            if (obstacle.Alone.IsEmpty)
            {
                SmallProblem.Best(problem with { Limits = obstacle.Together }).ShouldBeNull();
                obstacle.Together.Where(limit => SmallProblem.Best(problem with { Limits = obstacle.Together.Remove(limit) }) is null).ShouldBeEmpty();
            }
        }
    }

    private static ChoiceProblem Coverage(JsonElement one)
    {
        var items = one.GetProperty("weights").EnumerateObject().ToList();
        return new ChoiceProblem(
            [.. items.Select(item => item.Value.GetInt64())],
            [.. one.GetProperty("sets").EnumerateObject().Select(set => set.Value.EnumerateArray().Select(item => item.ToString()).ToHashSet(StringComparer.Ordinal))
                .Select(set => items.Select(item => set.Contains(item.Name) ? 1L : 0L).ToImmutableArray())],
            [new CountLimit(one.GetProperty("k").GetInt32())]);
    }
}
