using System.Collections.Immutable;
using ScoreRules.Catalogue;

namespace ScoreRules.Evidence;

/// <summary>Tested movements and their cousins, in groups that hang together by steps of a least likeness.</summary>
internal sealed class KinGroups
{
    private readonly double[][] kinship;

    private KinGroups(ImmutableArray<int> places, double[][] kinship)
    {
        Places = places;
        this.kinship = kinship;
    }

    /// <summary>The movements, by their place among the rows, rising.</summary>
    public ImmutableArray<int> Places { get; }

    /// <summary>Kinship of two members by position; 0 between groups.</summary>
    public double Of(int first, int second) => kinship[first][second];

    /// <summary>Finds the cousins of tested movements.</summary>
    /// <param name="rows">The movements of a target.</param>
    /// <param name="tested">Places of those that studies speak of.</param>
    /// <param name="least">The least likeness of a cousin, 0 to 1; null when nothing spreads.</param>
    /// <param name="kin">How alike and how akin two movements are.</param>
    public static KinGroups Of(ImmutableArray<PlacementRow> rows, IReadOnlySet<int> tested, double? least, Kin kin)
    {
        bool IsCousin(int one, int other) => least is { } floor && kin.Likeness.Between(rows[one].Movement, rows[other].Movement) >= floor;
        ImmutableArray<int> places = [.. Enumerable.Range(0, rows.Length).Where(place => tested.Contains(place) || tested.Any(other => IsCousin(place, other)))];
        var group = Groups(places, IsCousin);
        var table = Enumerable.Range(0, places.Length).Select(i => Enumerable.Range(0, places.Length)
            .Select(j => i == j || group[i] != group[j] ? 0 : kin.Kinship.Between(rows[places[i]].Movement, rows[places[j]].Movement)).ToArray());
        return new KinGroups(places, [.. table]);
    }

    private static int[] Groups(ImmutableArray<int> places, Func<int, int, bool> isCousin)
    {
        var group = Enumerable.Range(0, places.Length).ToArray();
        for (var i = 0; i < places.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (group[i] != group[j] && isCousin(places[i], places[j]))
                {
                    var (from, to) = (group[i], group[j]);
                    group = [.. group.Select(one => one == from ? to : one)];
                }
            }
        }

        return group;
    }
}
