using System.Collections.Immutable;
using ScoreRules.Catalogue;

namespace ScoreRules.Guarding.Breaking;

/// <summary>A smallest choice of sets that together hold every item. Sets that stand earlier are preferred.</summary>
/// <param name="Chosen">Positions of the sets, rising.</param>
/// <param name="IsSmallest">Whether it is proved that none is smaller; the search gives up after a fixed number of steps.</param>
/// <param name="Greedy">How many sets the greedy rule took.</param>
public sealed record SetCover(ImmutableArray<int> Chosen, bool IsSmallest, int Greedy)
{
    /// <summary>Steps of the search, each one choice of a set.</summary>
    private const int MostSteps = 200_000;

    /// <summary>Finds one.</summary>
    /// <param name="items">Number of items; each must be in some set.</param>
    /// <param name="sets">The sets, each a set of items.</param>
    public static SetCover Find(int items, IReadOnlyList<RowSet> sets)
    {
        var useful = Useful(sets);
        var greedy = TakeMost(items, sets, useful);
        var search = new CoverSearch(items, sets, useful, greedy, MostSteps);
        search.Run();
        return new SetCover([.. search.Best.Order()], search.IsComplete, greedy.Count);
    }

    /// <summary>The greedy rule: always the set that holds most of what is still missing; at least one of them in ln(n) + 1 too many.</summary>
    private static List<int> TakeMost(int items, IReadOnlyList<RowSet> sets, List<int> useful)
    {
        var (chosen, missing) = (new List<int>(), RowSet.All(items));
        while (!missing.IsEmpty)
        {
            var best = useful.MaxBy(position => sets[position].And(missing).Count);
            chosen.Add(best);
            missing = missing.AndNot(sets[best]);
        }

        return chosen;
    }

    // A set inside another is never needed; of equal sets the first stays.
    private static List<int> Useful(IReadOnlyList<RowSet> sets) =>
        [.. Enumerable.Range(0, sets.Count).Where(position => !sets[position].IsEmpty && !Enumerable.Range(0, sets.Count).Any(other => other != position
            && sets[position].IsSubsetOf(sets[other]) && (other < position || !sets[other].IsSubsetOf(sets[position]))))];
}
