using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue;

/// <summary>Decides whether a movement is ranked in a target.</summary>
internal sealed class TargetMembership(ImmutableArray<TargetDefinition> targets, AttributeDefinition? primeMover)
{
    private readonly Dictionary<string, TargetDefinition> byName = targets.DistinctBy(target => NameText.Key(target.Name)).ToDictionary(target => NameText.Key(target.Name), StringComparer.Ordinal);

    /// <summary>Whether the movement trains the target, or enters its parent and has one of its muscles as prime mover.</summary>
    public bool Enters(Movement movement, TargetDefinition target)
    {
        // As many steps up as there are targets, so that parents in a circle end.
        for (var (at, steps) = (target, 0); at is not null && steps <= byName.Count; (at, steps) = (ParentOf(at), steps + 1))
        {
            if (Trains(movement, at))
            {
                return true;
            }

            if (!HasPrimeMoverOf(movement, at))
            {
                return false;
            }
        }

        return false;
    }

    private TargetDefinition? ParentOf(TargetDefinition target) => target.Parent is { } parent ? byName.GetValueOrDefault(NameText.Key(parent)) : null;

    private static bool Trains(Movement movement, TargetDefinition target) => movement.Trains.Any(trained => NameText.Same(trained.Name, target.Name));

    private bool HasPrimeMoverOf(Movement movement, TargetDefinition target)
    {
        if (primeMover is null)
        {
            return false;
        }

        var codes = movement.Facts[primeMover.Index].Value.Codes;
        return target.Muscles.Any(part => codes.Contains(primeMover.CodeOf(part.Muscle)));
    }
}
