using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue;

/// <summary>Says which movements are ranked in which targets.</summary>
public static class PlacementRows
{
    /// <summary>
    /// The rows of a house, by target in its order, then by movement. A movement enters a target that it trains. It enters a
    /// sub-target too when it enters the parent and one of the sub-target's muscles is a prime mover. Training only a
    /// sub-target does not put it in the parent.
    /// </summary>
    public static ImmutableArray<PlacementRow> Build(BoundRuleset ruleset, MovementCatalogue catalogue)
    {
        var primeMover = ruleset.Attributes.FirstOrDefault(attribute => NameText.Same(attribute.Name, WellKnownAttributes.PrimeMover));
        var membership = new TargetMembership(ruleset.Targets, primeMover);
        var rows = ImmutableArray.CreateBuilder<PlacementRow>();
        foreach (var target in ruleset.Targets)
        {
            foreach (var movement in catalogue.Movements.Where(movement => membership.Enters(movement, target)))
            {
                rows.Add(new PlacementRow(rows.Count, movement, target));
            }
        }

        return rows.ToImmutable();
    }
}
