using ScoreRules.Catalogue;

namespace ScoreRules.Guarding.Breaking;

/// <summary>
/// Branch and bound: the missing item that fewest sets hold must be in one of them, so those are tried in turn. A branch is left when the
/// sets taken, and one more for each of some missing items that no set holds together, are as many as the best choice so far.
/// </summary>
/// <param name="items">Number of items.</param>
/// <param name="sets">All sets.</param>
/// <param name="useful">Positions of the sets that may be chosen.</param>
/// <param name="start">A choice that is known to do.</param>
/// <param name="mostSteps">After how many steps to give up.</param>
internal sealed class CoverSearch(int items, IReadOnlyList<RowSet> sets, List<int> useful, List<int> start, int mostSteps)
{
    private readonly int[][] holders = [.. Enumerable.Range(0, items).Select(item => useful.Where(position => sets[position].Contains(item)).ToArray())];
    private readonly List<int> taken = [];
    private int steps;

    /// <summary>The best choice found.</summary>
    public List<int> Best { get; private set; } = start;

    /// <summary>Whether everything was looked at, so that the best found is the best there is.</summary>
    public bool IsComplete => steps <= mostSteps;

    /// <summary>Searches.</summary>
    public void Run() => Visit(RowSet.All(items));

    private void Visit(RowSet missing)
    {
        if (missing.IsEmpty)
        {
            Best = taken.Count < Best.Count ? [.. taken] : Best;
            return;
        }

        if (taken.Count + Least(missing) >= Best.Count)
        {
            return;
        }

        var item = missing.MinBy(one => holders[one].Length);
        foreach (var position in holders[item].OrderByDescending(position => sets[position].And(missing).Count))
        {
            if (++steps > mostSteps)
            {
                return;
            }

            taken.Add(position);
            Visit(missing.AndNot(sets[position]));
            taken.RemoveAt(taken.Count - 1);
        }
    }

    // Items of which no two are held by one set need a set each.
    private int Least(RowSet missing)
    {
        var least = 0;
        while (!missing.IsEmpty)
        {
            var item = missing.MinBy(one => holders[one].Length);
            missing = holders[item].Aggregate(missing, (rest, position) => rest.AndNot(sets[position]));
            least++;
        }

        return least;
    }
}
