using ScoreRules.Catalogue;
using ScoreRules.Teaching;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Teaching;

public sealed class LessonTests
{
    public static TheoryData<string> Houses() => ["longreach", "longreach-second", "harbour-lane", "linden-court"];

    [Theory]
    [MemberData(nameof(Houses))]
    public void Every_movement_is_told_once_its_cousin_before_it_and_the_parts_add_up(string house)
    {
        var judgement = Judged.House(house);
        foreach (var ranking in judgement.Rankings)
        {
            var steps = Lesson.Of(judgement, ranking).Steps;
            steps[0].Movement.ShouldBe(ranking.Benchmark!.Movement.Name);
            steps.Select(step => step.Number).ShouldBe(Enumerable.Range(1, steps.Length));
            var ranked = ranking.Placements.Select(placement => placement.Row.Movement.Name).Append(steps[0].Movement).Distinct().Order();
            steps.Select(step => step.Movement).Order().ShouldBe(ranked);
            foreach (var step in steps.Skip(1))
            {
                step.Cousin!.Number.ShouldBeLessThan(step.Number);
                steps[step.Cousin.Number - 1].ShouldBeSameAs(step.Cousin);
                step.Parts.Sum(part => part.Points).ShouldBe(ranking.Of(step.Explained.Row.Movement)!.Score - step.Cousin.Score, 1e-9, step.Movement);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Houses))]
    public void No_movement_told_before_is_more_alike_than_the_cousin(string house)
    {
        var judgement = Judged.House(house);
        var likeness = new Likeness(judgement.Ruleset.Attributes);
        foreach (var steps in judgement.Rankings.Select(ranking => Lesson.Of(judgement, ranking).Steps))
        {
            foreach (var step in steps.Skip(1))
            {
                step.Likeness.ShouldBe(likeness.Between(step.Explained.Row.Movement, step.Cousin!.Explained.Row.Movement), 1e-8);
                steps.Take(step.Number - 1).Max(earlier => likeness.Between(step.Explained.Row.Movement, earlier.Explained.Row.Movement)).ShouldBeLessThanOrEqualTo(step.Likeness + 1e-8);
            }
        }
    }

    [Fact]
    public void The_order_of_files_and_statements_changes_nothing()
    {
        var sources = Judged.Longreach.Sources;
        var turned = Judge.Run(sources with { Files = [.. sources.Files.Reverse()] });
        Told(turned, "quadriceps").ShouldBe(Told(Judged.Longreach, "quadriceps"));
    }

    [Fact]
    public void A_benchmark_that_is_only_measured_against_is_told_first_all_the_same()
    {
        var judgement = Judged.Text("""
            ruleset A
              version 1

            muscle soleus

            attribute steadiness
              rated 0 to 4
              counts for likeness

            target calves
              made of soleus 100 parts
              benchmark plain raise

            tiers
              Above is from 5 points above the benchmark
              The rest is the rest

            criterion steadiness
              counts 10 parts
              reads steadiness
              worth 0% at 0, 100% at 4

            leave out plain raise
              because we only measure against it

            movement plain raise
              trains calves
              steadiness is 2

            movement steady raise
              trains calves
              steadiness is 4
            """);
        judgement.HasErrors.ShouldBeFalse();
        var steps = Lesson.Of(judgement, judgement.Target("calves")).Steps;
        steps.Select(step => (step.Movement, step.Cousin?.Movement, step.Score)).ShouldBe([("plain raise", null, 50), ("steady raise", "plain raise", 100)]);
        steps[1].Parts.Single().Points.ShouldBe(50);
    }

    private static IEnumerable<(string Movement, string? Cousin)> Told(Judgement judgement, string target) =>
        Lesson.Of(judgement, judgement.Target(target)).Steps.Select(step => (step.Movement, step.Cousin?.Movement));
}
