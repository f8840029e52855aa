using CsCheck;
using ScoreRules.Houses;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Houses;

/// <summary>The order of statements never changes a score, a tier, a rank or an explanation.</summary>
public sealed class OrderTests
{
    [Fact]
    public void Shuffled_statements_give_the_same_rankings_and_reasons()
    {
        var files = HouseFolder.Read(Repository.PathOf("rulesets", "longreach")).Files;
        var expected = Summary(Judged.Longreach);
        Gen.Int.Sample(
            seed =>
            {
                var shuffled = files.Select(file => file with { Text = Shuffle(file.Text, seed) });
                var judgement = Judge.Run(new HouseSources([.. shuffled], []));
                Summary(judgement).ShouldBe(expected);
            },
            iter: 5);
    }

    // Statements that depend on the place they stand in keep it: tiers and sections are single statements anyway.
    private static string Shuffle(string text, int seed)
    {
        var statements = text.ReplaceLineEndings("\n").Split("\n\n").Where(statement => statement.Length > 0).ToArray();
        new Random(seed).Shuffle(statements);
        return string.Join("\n\n", statements.Select(statement => statement.TrimEnd('\n'))) + "\n";
    }

    private static string Summary(Judgement judgement)
    {
        judgement.HasErrors.ShouldBeFalse();
        var rankings = judgement.Rankings.OrderBy(ranking => ranking.Target.Name, StringComparer.Ordinal).ToList();
        var lines = rankings.SelectMany(ranking => ranking.Placements.Select(placement =>
        {
            var explained = judgement.Explainer!.Explain(ranking, placement.Row.Movement)!;
            var reasons = string.Join(", ", explained.Reasons.Select(reason => $"{reason.Name} {reason.Points:R}"));
            var cautions = string.Join(" ", explained.Cautions.Select(caution => caution.Caution.Text));
            return $"{ranking.Target.Name} {placement.Rank} {placement.Row.Movement.Name} {placement.Score:R} {placement.Tier.Name} {reasons} {cautions}";
        }));
        return string.Join("\n", lines);
    }
}
