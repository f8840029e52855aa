using System.Collections.Immutable;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.Kit;

/// <summary>Finds which kit to buy next: every piece, and every two pieces, are tried.</summary>
internal static class PurchaseFinder
{
    /// <summary>The answer.</summary>
    public static PurchaseAnswer Find(AskedHouse house)
    {
        var (asked, profile) = house.ThroughProfile();
        if (profile?.Kit is not { } kit)
        {
            return new PurchaseAnswer(asked.Question, null, [], null, null) { Profiles = [.. asked.Ruleset.Profiles.Where(other => other.Kit is not null).Select(other => other.Name)] };
        }

        // A sub-target is part of its target and would count twice, unless it is asked about by name.
        var counted = asked.Question.Targets.IsEmpty ? asked.Rankings.Where(ranking => ranking.Target.Parent is null) : asked.Rankings;
        var shop = new Shop(new KitLists(asked.Judgement, counted, profile), [.. kit]);
        var singles = shop.Best(shop.Missing.Select(code => (ImmutableArray<int>)[code]));
        var second = singles.IsEmpty ? null : shop.After(singles[0]);
        var pairs = shop.Best(shop.Missing.SelectMany(_ => shop.Missing, (first, other) => (first, other)).Where(pair => pair.first < pair.other).Select(pair => (ImmutableArray<int>)[pair.first, pair.other]));
        return new PurchaseAnswer(asked.Question, profile, singles, second, pairs.IsEmpty ? null : pairs[0]) { Anew = asked.Judgement };
    }

    private sealed class Shop(KitLists lists, ImmutableHashSet<int> kit)
    {
        private readonly Dictionary<TargetRanking, Placement?> now = lists.Rankings.ToDictionary(ranking => ranking, ranking => lists.Left(ranking, kit).FirstOrDefault());

        /// <summary>Kit that some movement needs and that is not there.</summary>
        public ImmutableArray<int> Missing { get; } = [.. lists.Used.Where(code => !kit.Contains(code))];

        /// <summary>What sets of pieces add, best first; sets that add nothing are left out.</summary>
        public ImmutableArray<Purchase> Best(IEnumerable<ImmutableArray<int>> sets) =>
        [
            .. sets.Select(Buy).Where(purchase => purchase.Points > 0)
                .OrderByDescending(purchase => Rounding.Compared(purchase.Points)).ThenBy(purchase => string.Join(',', purchase.Kit), StringComparer.Ordinal),
        ];

        /// <summary>The best piece once another is bought; null when none adds anything to it.</summary>
        public Purchase? After(Purchase first)
        {
            var owned = lists.Equipment!.CodeOf(first.Kit[0]);
            var best = Best(Missing.Where(code => code != owned).Select(code => (ImmutableArray<int>)[owned, code])).FirstOrDefault();
            return best is null || Rounding.Compared(best.Points) <= Rounding.Compared(first.Points) ? null : best with { Kit = [.. best.Kit.Where(name => name != first.Kit[0]).Prepend(first.Kit[0])] };
        }

        private Purchase Buy(ImmutableArray<int> pieces)
        {
            var more = kit.Union(pieces);
            var rises = lists.Rankings.Select(ranking => (ranking, after: lists.Left(ranking, more).FirstOrDefault())).Where(pair => pair.after is not null)
                .Select(pair => new PurchaseRise(pair.ranking.Target, now[pair.ranking], pair.after!)).Where(rise => rise.Before is null || rise.After.Row.Index != rise.Before.Row.Index);
            return new Purchase([.. pieces.Select(code => lists.Equipment!.Values[code])], [.. rises.OrderByDescending(rise => Rounding.Compared(rise.Points)).ThenBy(rise => rise.Target.Index)]);
        }
    }
}
