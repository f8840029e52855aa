using ScoreRules.Catalogue;
using ScoreRules.Tiering;

namespace ScoreRules.Explanation;

/// <summary>Finds movements in one ranking without reading it from the top.</summary>
internal sealed class PlacementIndex(TargetRanking ranking)
{
    private readonly Dictionary<int, Placement> placements = ranking.Placements.ToDictionary(placement => placement.Row.Movement.Index);
    private readonly Dictionary<int, LeftOutRow> leftOut = ranking.LeftOut.ToDictionary(row => row.Row.Movement.Index);

    /// <summary>Where a movement stands, or what leaves it out; both null when it does not train the target.</summary>
    public (Placement? Placement, LeftOutRow? LeftOut) Find(Movement movement) =>
        (placements.GetValueOrDefault(movement.Index), leftOut.GetValueOrDefault(movement.Index));
}
