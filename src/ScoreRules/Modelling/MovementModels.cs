using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Modelling;

/// <summary>All movements of a catalogue as mechanics sees them.</summary>
public static class MovementModels
{
    /// <summary>Each movement that states a geometry, for each target it trains, in the order of the catalogue.</summary>
    /// <param name="ruleset">The house.</param>
    /// <param name="catalogue">Its movements.</param>
    public static ImmutableArray<MovementModel> Of(BoundRuleset ruleset, MovementCatalogue catalogue)
    {
        var builder = new MechanismBuilder(ruleset);
        return
        [
            .. catalogue.Movements.Where(movement => !movement.Geometry.IsEmpty)
                .SelectMany(movement => movement.Trains.Select(target => builder.Build(movement, target))),
        ];
    }
}
