using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Counts what was read but has no effect yet, by kind.</summary>
internal sealed class LaterList
{
    private readonly Dictionary<string, (int Count, SourceLocation First)> byKind = new(StringComparer.Ordinal);

    /// <summary>Counts one.</summary>
    public void Add(string what, SourceLocation place)
    {
        var (count, first) = byKind.GetValueOrDefault(what, (0, place));
        byKind[what] = (count + 1, SourceLocation.Compare(place, first) < 0 ? place : first);
    }

    /// <summary>All kinds by name.</summary>
    public ImmutableArray<NotYetApplied> ToList() =>
        [.. byKind.OrderBy(pair => pair.Key, StringComparer.Ordinal).Select(pair => new NotYetApplied(pair.Key, pair.Value.Count, pair.Value.First))];
}
