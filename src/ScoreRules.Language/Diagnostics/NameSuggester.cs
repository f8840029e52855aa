using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Diagnostics;

/// <summary>"Did you mean": the few legal names nearest to what was written; none rather than a silly one.</summary>
public static class NameSuggester
{
    private const int Most = 3;
    private static readonly string[] Denials = ["no", "not", "non", "never", "without"];

    /// <summary>At most three names, nearest first, ties in the order given.</summary>
    /// <param name="written">The name that was not found.</param>
    /// <param name="legal">The names that would be right there.</param>
    public static ImmutableArray<string> Nearest(string written, IEnumerable<string> legal)
    {
        var key = NameText.Key(written);
        var limit = Math.Max(1, key.Length / 3);
        var near = legal
            .Distinct(StringComparer.Ordinal)
            .Where(name => Denies(key) == Denies(NameText.Key(name)))
            .Select(name => (name, distance: Distance(key, NameText.Key(name), limit)))
            .Where(candidate => candidate.distance <= limit)
            .OrderBy(candidate => candidate.distance)
            .ToList();
        var best = near.Count == 0 ? 0 : near[0].distance;
        return [.. near.Where(candidate => candidate.distance <= best + 1).Take(Most).Select(candidate => candidate.name)];
    }

    // "no barbell" is two letters from its opposite: such a name is never offered.
    private static bool Denies(string name) => name.Split([' ', '-'], 2) is [var first, _] && Denials.Contains(first, StringComparer.Ordinal);

    private static int Distance(string written, string candidate, int limit)
    {
        var whole = NameDistance.Between(written, candidate, limit);
        return whole != int.MaxValue || !SameWords(written, candidate) ? whole : 1;
    }

    private static bool SameWords(string left, string right) =>
        left.Length == right.Length && left.Split(' ').Order(StringComparer.Ordinal).SequenceEqual(right.Split(' ').Order(StringComparer.Ordinal));
}
