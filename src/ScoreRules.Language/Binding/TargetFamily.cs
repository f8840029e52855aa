using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>Which targets are part of which. What is said for a target holds for its parts, unless something is said for the part itself.</summary>
/// <param name="targets">The targets of the house.</param>
public sealed class TargetFamily(ImmutableArray<TargetDefinition> targets)
{
    private readonly Dictionary<string, TargetDefinition> byKey = targets.DistinctBy(target => NameText.Key(target.Name)).ToDictionary(target => NameText.Key(target.Name), StringComparer.Ordinal);

    /// <summary>A target, then the one it is part of, and so on up; a circle ends where it began.</summary>
    public IEnumerable<TargetDefinition> WithParents(TargetDefinition target)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (var at = target; at is not null && seen.Add(NameText.Key(at.Name)); at = at.Parent is { } parent ? byKey.GetValueOrDefault(NameText.Key(parent)) : null)
        {
            yield return at;
        }
    }

    /// <summary>The names under which something may be said for a target, nearest first: its own, its parent's and so on, also of a parent that nobody declared.</summary>
    public IEnumerable<string> Names(TargetDefinition target) =>
        WithParents(target).SelectMany(at => at.Parent is { } parent ? [NameText.Key(at.Name), NameText.Key(parent)] : new[] { NameText.Key(at.Name) }).Distinct(StringComparer.Ordinal);

    /// <summary>Whether a scope entry names the target or one that it is part of.</summary>
    public bool Covers(ScopeEntry entry, TargetDefinition target) => entry.Target is { } named && Names(target).Contains(NameText.Key(named.Name), StringComparer.Ordinal);

    /// <summary>Of several lines said for targets, those for the smallest target that fits: the target itself, its parent, every target.</summary>
    /// <param name="target">The target.</param>
    /// <param name="lines">The lines.</param>
    /// <param name="targetsOf">The targets a line is for; empty for all.</param>
    public ImmutableArray<T> Nearest<T>(TargetDefinition target, ImmutableArray<T> lines, Func<T, IEnumerable<TargetDefinition>> targetsOf)
    {
        foreach (var name in Names(target))
        {
            var own = lines.Where(line => targetsOf(line).Any(named => NameText.Key(named.Name) == name)).ToImmutableArray();
            if (!own.IsEmpty)
            {
                return own;
            }
        }

        return [.. lines.Where(line => !targetsOf(line).Any())];
    }
}
