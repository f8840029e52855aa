using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Houses;

/// <summary>Judging once more with something changed is what judging the changed text would give.</summary>
public sealed class JudgedAgainTests
{


    [Fact]
    public void With_nothing_changed_it_gives_the_same_ranking()
    {
        var before = Judged.Longreach;
        Shown(Judge.Again(before, before.Ruleset, before.Catalogue)).ShouldBe(Shown(before));
    }

    [Fact]
    public void Without_a_rule_it_gives_what_the_house_without_that_rule_gives()
    {
        var before = Judged.Longreach;
        var award = before.Ruleset.Awards.First();
        var without = Judge.Again(before, before.Ruleset with { Awards = before.Ruleset.Awards.Remove(award) }, before.Catalogue);
        Shown(without).ShouldNotBe(Shown(before));
        without.Rankings.SelectMany(ranking => ranking.Placements).Count().ShouldBe(before.Rankings.SelectMany(ranking => ranking.Placements).Count());
    }

    [Fact]
    public void A_supposed_fact_reaches_called_facts_and_scores()
    {
        var before = Judged.Longreach;
        var attribute = before.Ruleset.Attributes.Single(one => one.Name == "external support");
        var movement = before.Movement("seated leg curl");
        var supposed = Judge.Again(before, before.Ruleset, Supposition.Suppose(before.Catalogue, movement, attribute, FactValue.Of(0)));
        supposed.Target("hamstrings").Of(movement)!.Score.ShouldBeLessThan(before.Target("hamstrings").Of(movement)!.Score);
    }

    private static string Shown(Judgement judgement) => string.Join('\n', judgement.Rankings.SelectMany(ranking => ranking.Placements)
        .Select(placement => $"{placement.Row.Target.Name} {placement.Rank} {placement.Row.Movement.Name} {placement.Score:R} {placement.Tier.Name}"));
}
