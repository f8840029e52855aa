using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.Change;

/// <summary>
/// Finds the smallest changes of facts that reach a goal: every single change, then every pair, then sets of three up to a bound. Nothing
/// is estimated: each set is judged.
/// </summary>
/// <param name="suppositions">Judges sets.</param>
/// <param name="candidates">The single changes worth supposing.</param>
/// <param name="isReached">Whether a supposition does what was asked for.</param>
internal sealed class ChangeSearch(Suppositions suppositions, ImmutableArray<FactChange> candidates, Func<Supposed, bool> isReached)
{
    /// <summary>How many sets of two, and of three, are judged at most.</summary>
    public const int Most = 16384;
    private const int MostOneByOne = 200;
    private const int MostDerived = 1024;
    private const int PairsTold = 6;
    private const int TriplesTold = 3;
    private const int GridLines = 40;
    private const int AttemptsForEach = 4;
    private int tried;
    private int refused;

    /// <summary>The search.</summary>
    public ChangesFound Run()
    {
        var reached = Reached(candidates.Select(change => (ImmutableArray<FactChange>)[change]));
        var singles = reached.GroupBy(found => found.Changes[0].Attribute.Index).SelectMany(Smallest).OrderBy(found => found.Size).ToList();
        var enough = reached.GroupBy(found => found.Changes[0].Attribute.Index).ToDictionary(group => group.Key, group => group.Min(found => found.Size));
        var alone = reached.Select(found => found.Changes[0]).ToHashSet(ReferenceEqualityComparer.Instance);
        // Where one change of a fact is enough, larger ones of the same fact say nothing more.
        var rest = candidates.Where(change => !alone.Contains(change) && change.Size < enough.GetValueOrDefault(change.Attribute.Index, double.PositiveInfinity)).ToList();
        var (pairs, fewPairs) = Sets(rest, 2, []);
        var (triples, fewTriples) = Sets(rest, 3, pairs);
        return new ChangesFound(Confirmed(singles, int.MaxValue), Confirmed(Least(pairs), PairsTold), Confirmed(Least(triples), TriplesTold), tried, refused, fewPairs || fewTriples)
        {
            MorePairs = Math.Max(0, Least(pairs).Count() - PairsTold),
            MoreTriples = Math.Max(0, Least(triples).Count() - TriplesTold),
        };
    }

    private List<Supposed> Reached(IEnumerable<ImmutableArray<FactChange>> sets)
    {
        var found = new List<Supposed>();
        foreach (var supposed in suppositions.Judge(sets))
        {
            tried++;
            if (isReached(supposed))
            {
                refused += supposed.IsRefused ? 1 : 0;
                found.AddRange(supposed.IsRefused ? [] : new[] { supposed });
            }
        }

        return found;
    }

    // Of words all that do it, of numbers and lists the smallest change.
    private IEnumerable<Supposed> Smallest(IEnumerable<Supposed> ofOneFact)
    {
        var all = ofOneFact.OrderBy(found => found.Size).ToList();
        return all[0].Changes[0].Attribute.Kind switch
        {
            AttributeKind.OneOf => all,
            AttributeKind.Measure => [Refined(all[0])],
            _ => all.TakeWhile(found => found.Size <= all[0].Size),
        };
    }

    // Between the nearest number that does not do it and the one that does, on lines of a readable width.
    private Supposed Refined(Supposed found)
    {
        var change = found.Changes[0];
        if (!change.From.Value.IsKnown)
        {
            return found;
        }

        var (now, then) = (change.From.Value.Number, change.To.Number);
        var near = candidates.Where(other => other.Attribute.Index == change.Attribute.Index && Math.Abs(other.To.Number - now) < Math.Abs(then - now) && (other.To.Number - now) * (then - now) > 0)
            .Select(other => other.To.Number).Append(now).MaxBy(number => Math.Abs(number - now));
        var grid = Grid(near, then).Select(number => (ImmutableArray<FactChange>)[new FactChange(change.Attribute, change.From, FactValue.Of(number))]);
        return Reached(grid).OrderBy(better => better.Size).FirstOrDefault(found);
    }

    private static IEnumerable<double> Grid(double from, double to)
    {
        var width = Readable(Math.Abs(to - from) / GridLines);
        var (low, high) = (Math.Min(from, to), Math.Max(from, to));
        for (var line = Math.Ceiling(low / width); line * width <= high; line++)
        {
            yield return Math.Round(line * width, 9);
        }
    }

    private static double Readable(double width)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(width)));
        return width / power <= 1 ? power : width / power <= 2 ? 2 * power : width / power <= 5 ? 5 * power : 10 * power;
    }

    // The smallest sets are judged first, so that a bound leaves out the largest.
    private (List<Supposed> Found, bool IsBounded) Sets(List<FactChange> pool, int size, List<Supposed> smaller)
    {
        var most = suppositions.OneByOne ? MostOneByOne : suppositions.ReadsDerived ? MostDerived : Most;
        var all = (size == 2 ? Pairs(pool) : Triples(pool)).Where(set => !smaller.Exists(pair => pair.Changes.All(change => set.Any(other => ReferenceEquals(change, other)))))
            .OrderBy(set => set.Sum(change => change.Size)).ToList();
        return (Reached(all.Take(most)), all.Count > most);
    }

    private static IEnumerable<ImmutableArray<FactChange>> Pairs(List<FactChange> pool) =>
        from first in Enumerable.Range(0, pool.Count)
        from second in Enumerable.Range(first + 1, pool.Count - first - 1)
        where pool[first].Attribute.Index != pool[second].Attribute.Index
        select (ImmutableArray<FactChange>)[pool[first], pool[second]];

    private static IEnumerable<ImmutableArray<FactChange>> Triples(List<FactChange> pool) =>
        from first in Enumerable.Range(0, pool.Count)
        from second in Enumerable.Range(first + 1, pool.Count - first - 1)
        where pool[first].Attribute.Index != pool[second].Attribute.Index
        from third in Enumerable.Range(second + 1, pool.Count - second - 1)
        where pool[third].Attribute.Index != pool[second].Attribute.Index
        select (ImmutableArray<FactChange>)[pool[first], pool[second], pool[third]];

    // For each group of facts the smallest change of them; those that a gym can arrange first.
    private static IEnumerable<Supposed> Least(IEnumerable<Supposed> found) =>
        found.GroupBy(set => string.Join(',', set.Changes.Select(change => change.Attribute.Index)), StringComparer.Ordinal)
            .Select(group => group.MinBy(set => set.Size)!).OrderBy(set => !set.GymCanChange).ThenBy(set => set.Size);

    // Where studies move a score they may move it otherwise once a fact is another: what does not hold then is passed over.
    private ImmutableArray<Supposed> Confirmed(IEnumerable<Supposed> found, int most) =>
        [.. found.Take(most == int.MaxValue ? most : AttemptsForEach * most).Select(set => suppositions.Alone(set.Changes)).OfType<Supposed>().Where(set => isReached(set) && !set.IsRefused).Take(most)];
}
