using System.Collections.Immutable;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.Kit;

/// <summary>Finds what is lost without some kit.</summary>
internal static class LossFinder
{
    private const int Told = 3;

    /// <summary>The answer.</summary>
    public static LossAnswer Find(AskedHouse house)
    {
        var (asked, profile) = house.ThroughProfile();
        var lists = new KitLists(asked.Judgement, asked.Rankings, profile);
        var kit = (profile?.Kit ?? lists.Used).ToImmutableHashSet();
        var without = kit.Except(asked.Question.Kit);
        var names = asked.Question.Kit.Select(code => lists.Equipment!.Values[code]).ToImmutableArray();
        return new LossAnswer(asked.Question, profile, names, [.. lists.Rankings.Select(ranking => Compare(lists, ranking, kit, without))]) { Anew = asked.Judgement };
    }

    private static LossFinding Compare(KitLists lists, TargetRanking ranking, ImmutableHashSet<int> kit, ImmutableHashSet<int> without)
    {
        var (before, after) = (lists.Left(ranking, kit).ToList(), lists.Left(ranking, without).ToList());
        return new LossFinding(ranking.Target, [.. before.Take(Told)], [.. after.Take(Told)], [.. before.Where(placement => !after.Contains(placement))]);
    }
}
