namespace ScoreRules.Statistics.Beliefs;

/// <summary>Finds orders that go round in a circle: a above b, b above c, c above a.</summary>
public static class OrderCycles
{
    /// <summary>A shortest circle through the lowest place of each group of scores that go round; no score stands in two of them.</summary>
    /// <returns>The places of each circle in turn, each above the next and the last above the first.</returns>
    public static IReadOnlyList<IReadOnlyList<int>> Find(IReadOnlyList<HeldOrder> orders)
    {
        var below = orders.ToLookup(order => order.Above, order => order.Below);
        var cycles = new List<IReadOnlyList<int>>();
        var seen = new HashSet<int>();
        foreach (var start in orders.Select(order => order.Above).Distinct().Order())
        {
            if (!seen.Contains(start) && Shortest(start, below) is { } cycle)
            {
                cycles.Add(cycle);
                seen.UnionWith(cycle);
            }
        }

        return cycles;
    }

    // Breadth first from the start until an order leads back to it.
    private static List<int>? Shortest(int start, ILookup<int, int> below)
    {
        var cameFrom = new Dictionary<int, int>();
        var queue = new Queue<int>([start]);
        while (queue.TryDequeue(out var at))
        {
            foreach (var next in below[at].Order())
            {
                if (next == start)
                {
                    return Path(start, at, cameFrom);
                }

                if (cameFrom.TryAdd(next, at))
                {
                    queue.Enqueue(next);
                }
            }
        }

        return null;
    }

    private static List<int> Path(int start, int end, Dictionary<int, int> cameFrom)
    {
        var path = new List<int> { end };
        while (path[^1] != start)
        {
            path.Add(cameFrom[path[^1]]);
        }

        path.Reverse();
        return path;
    }
}
