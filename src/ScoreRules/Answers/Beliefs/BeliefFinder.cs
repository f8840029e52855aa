using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.Beliefs;

/// <summary>Finds which placements rest on one statement, by judging the house without it.</summary>
internal static class BeliefFinder
{
    /// <summary>What rests on each statement that is not said to be sure, and on each criterion.</summary>
    public static BeliefAnswer Shaky(AskedHouse asked) =>
        Find(asked, Without.Removable(asked.Ruleset).Where(IsDoubted).Select(statement => (ImmutableArray<BoundStatement>)[statement]), _ => true);

    /// <summary>On which of those, and on which other statements, the tier of one movement rests.</summary>
    public static BeliefAnswer Where(AskedHouse asked)
    {
        var movement = asked.Movement(0);
        return Find(asked, Without.Removable(asked.Ruleset).Select(statement => (ImmutableArray<BoundStatement>)[statement]), row => row.Movement.Index == movement.Index);
    }

    /// <summary>What rests on the statements of one name.</summary>
    public static BeliefAnswer On(AskedHouse asked)
    {
        var named = Without.Removable(asked.Ruleset).Where(statement => statement.Info.Name is { } name && NameText.Same(name, asked.Question.Statement!)).ToImmutableArray();
        return Find(asked, named.IsEmpty ? [] : [named], _ => true);
    }

    private static bool IsDoubted(BoundStatement statement) => statement is CriterionDefinition || statement.Info.Credence is Credence.Probable or Credence.Shaky;

    private static BeliefAnswer Find(AskedHouse asked, IEnumerable<ImmutableArray<BoundStatement>> sets, Func<PlacementRow, bool> isAsked)
    {
        var before = Tiers(asked.Rankings).Where(pair => isAsked(pair.Key)).ToList();
        return new BeliefAnswer(asked.Question, [.. sets.Select(set => Find(asked, set, before))], before.Count);
    }

    private static BeliefFinding Find(AskedHouse asked, ImmutableArray<BoundStatement> set, List<KeyValuePair<PlacementRow, TierDefinition?>> before)
    {
        var again = Judge.Again(asked.Judgement, Without.Of(asked.Ruleset, set), asked.Judgement.Catalogue);
        var after = Tiers(again.Rankings).ToDictionary(pair => (pair.Key.Movement.Index, pair.Key.Target.Index), pair => pair.Value);
        var unscored = asked.Rankings.Where(ranking => again.Rankings.All(other => other.Target.Index != ranking.Target.Index)).Select(ranking => ranking.Target.Name);
        var moves = before.Where(pair => after.TryGetValue((pair.Key.Movement.Index, pair.Key.Target.Index), out var tier) && tier?.Index != pair.Value?.Index)
            .Select(pair => new TierMove(pair.Key, pair.Value, after[(pair.Key.Movement.Index, pair.Key.Target.Index)]));
        return new BeliefFinding(set, [.. moves], [.. unscored]);
    }

    private static IEnumerable<KeyValuePair<PlacementRow, TierDefinition?>> Tiers(IEnumerable<TargetRanking> rankings) => rankings.SelectMany(ranking =>
        ranking.Placements.Select(placement => KeyValuePair.Create(placement.Row, (TierDefinition?)placement.Tier))
            .Concat(ranking.LeftOut.Select(row => KeyValuePair.Create(row.Row, (TierDefinition?)null))).OrderBy(pair => pair.Key.Index));
}
