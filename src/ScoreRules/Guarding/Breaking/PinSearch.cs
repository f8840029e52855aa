using System.Collections.Immutable;
using ScoreRules.Catalogue;

namespace ScoreRules.Guarding.Breaking;

/// <summary>
/// Chooses pins for what nothing noticed. A breakage that counts has moved a tier, so "this movement is in that tier" can always notice it;
/// no other claims are tried. Of equally useful pins the one farther from a border is taken: it survives small changes that are meant.
/// </summary>
internal sealed class PinSearch(Judgement before)
{
    /// <summary>The pins that notice all of these.</summary>
    public PinChoice Choose(IReadOnlyList<BreakageOutcome> unnoticed)
    {
        if (unnoticed.Count == 0)
        {
            return PinChoice.None;
        }

        var pins = Pins(unnoticed).OrderByDescending(pin => double.IsNaN(pin.ToBorder) ? -1 : Tiering.Rounding.Compared(pin.ToBorder)).ThenBy(pin => pin.Row.Index).ToList();
        var noticing = pins.ConvertAll(pin => RowSet.Of(unnoticed.Count, Enumerable.Range(0, unnoticed.Count).Where(one => unnoticed[one].Moved.Any(moved => moved.Row.Index == pin.Row.Index))));
        var cover = SetCover.Find(unnoticed.Count, noticing);
        return new PinChoice([.. cover.Chosen.Select(position => pins[position]).OrderBy(pin => pin.Row.Index)], cover.IsSmallest, cover.Greedy);
    }

    private IEnumerable<Pin> Pins(IReadOnlyList<BreakageOutcome> unnoticed)
    {
        var placements = before.Rankings.SelectMany(ranking => ranking.Placements).ToDictionary(placement => placement.Row.Index);
        return unnoticed.SelectMany(outcome => outcome.Moved).DistinctBy(moved => moved.Row.Index)
            .Select(moved => new Pin(moved.Row, moved.Before, placements.GetValueOrDefault(moved.Row.Index)?.ToBorder ?? double.NaN));
    }
}
