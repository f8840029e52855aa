using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue;

/// <summary>All movements, by name order, and a way to find one by any of its names.</summary>
public sealed class MovementCatalogue
{
    private readonly Dictionary<string, Movement> byName = new(StringComparer.Ordinal);

    /// <summary>Keeps the movements; their indexes must be their positions.</summary>
    public MovementCatalogue(ImmutableArray<Movement> movements)
    {
        Movements = movements;
        foreach (var movement in movements)
        {
            byName.TryAdd(NameText.Key(movement.Name), movement);
        }

        foreach (var movement in movements)
        {
            foreach (var synonym in movement.Synonyms)
            {
                byName.TryAdd(NameText.Key(synonym), movement);
            }
        }
    }

    /// <summary>The movements.</summary>
    public ImmutableArray<Movement> Movements { get; }

    /// <summary>The movement of a name or synonym, or null.</summary>
    public Movement? Find(string name) => byName.GetValueOrDefault(NameText.Key(name));
}
