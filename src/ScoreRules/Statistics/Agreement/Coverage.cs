namespace ScoreRules.Statistics.Agreement;

/// <summary>
/// A few sets that together cover much weight, one at a time, each the one that adds most; at least 1 - 1/e = 63 % of what the best few
/// would cover (Nemhauser, Wolsey and Fisher 1978, Mathematical Programming 14:265). Of sets that add equally the earlier one is taken.
/// </summary>
/// <param name="Chosen">The places of the sets, in the order taken; fewer than asked for when nothing more can be added.</param>
/// <param name="Value">The weight covered.</param>
public sealed record Coverage(IReadOnlyList<int> Chosen, double Value)
{
    /// <summary>Chooses sets.</summary>
    /// <param name="sets">For each set the places of the items in it.</param>
    /// <param name="weights">The weight of each item, 0 or more.</param>
    /// <param name="count">How many sets at most, 0 or more.</param>
    /// <exception cref="StatisticsInputException">A weight below 0, or an item that is not there.</exception>
    public static Coverage Greedy(IReadOnlyList<IReadOnlyCollection<int>> sets, IReadOnlyList<double> weights, int count)
    {
        Require.AtLeast(count, 0, "The number of sets to choose");
        double[] left = [.. weights.Select(weight => Require.NotNegative(weight, "The weight of an item"))];
        foreach (var item in sets.SelectMany(set => set))
        {
            Require.Index(item, left.Length, "An item of a set");
        }

        var (chosen, value) = (new List<int>(), 0.0);
        while (chosen.Count < count)
        {
            var (best, gain) = Best(sets, left);
            if (best < 0)
            {
                break;
            }

            chosen.Add(best);
            value += gain;
            foreach (var item in sets[best])
            {
                left[item] = 0;
            }
        }

        return new Coverage(chosen, value);
    }

    private static (int Best, double Gain) Best(IReadOnlyList<IReadOnlyCollection<int>> sets, double[] left)
    {
        var (best, most) = (-1, 0.0);
        for (var i = 0; i < sets.Count; i++)
        {
            var gain = sets[i].Distinct().Sum(item => left[item]);
            (best, most) = gain > most ? (i, gain) : (best, most);
        }

        return (best, most);
    }
}
