using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Tiering;

namespace ScoreRules.Certainty;

/// <summary>How sure the placements of a target are.</summary>
/// <param name="Ranking">The ranking as it is printed.</param>
/// <param name="Tries">How many tries were made.</param>
/// <param name="Placements">By placement, in the order of the ranking.</param>
public sealed record TargetCertainty(TargetRanking Ranking, int Tries, ImmutableArray<PlacementCertainty> Placements)
{
    private const double Even = 0.05;

    /// <summary>The share of tries in which one placement (by its position) scores above another; equal scores count half.</summary>
    public required double[][] Ahead { get; init; }

    /// <summary>Pairs that are not really different: each ahead in 45 to 55 tries of 100. The better placed first.</summary>
    public IEnumerable<(PlacementCertainty First, PlacementCertainty Second)> NotReallyDifferent() =>
        from i in Enumerable.Range(0, Placements.Length)
        from j in Enumerable.Range(i + 1, Placements.Length - i - 1)
        where Math.Abs(Ahead[i][j] - 0.5) <= Even
        select (Placements[i], Placements[j]);

    /// <summary>The movements that one of the placements is not really different from, in the order of the ranking.</summary>
    public IEnumerable<PlacementCertainty> Beside(PlacementCertainty one) =>
        NotReallyDifferent().Where(pair => pair.First == one || pair.Second == one).Select(pair => pair.First == one ? pair.Second : pair.First);

    /// <summary>How often one movement is ahead of another; null when one of them is not ranked.</summary>
    public double? AheadOf(Movement first, Movement second) =>
        PlaceOf(first) is { } i && PlaceOf(second) is { } j ? Ahead[i][j] : null;

    /// <summary>How sure the placement of a movement is; null when it is not ranked.</summary>
    public PlacementCertainty? Of(Movement movement) => PlaceOf(movement) is { } place ? Placements[place] : null;

    private int? PlaceOf(Movement movement)
    {
        for (var i = 0; i < Placements.Length; i++)
        {
            if (Placements[i].Placement.Row.Movement.Index == movement.Index)
            {
                return i;
            }
        }

        return null;
    }
}
