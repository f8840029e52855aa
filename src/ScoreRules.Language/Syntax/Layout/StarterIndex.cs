using System.Collections.Frozen;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Layout;

/// <summary>Finds which starter a line begins with; of several the longest wins.</summary>
internal sealed class StarterIndex<T>
    where T : class
{
    private readonly FrozenDictionary<string, (IReadOnlyList<string> Words, T Value)[]> byFirstWord;
    private readonly FrozenDictionary<string, (IReadOnlyList<string> Words, T Value)[]>.AlternateLookup<ReadOnlySpan<char>> lookup;

    /// <summary>Builds the index; starters without words are left out.</summary>
    public StarterIndex(IEnumerable<(IReadOnlyList<string> Words, T Value)> starters)
    {
        byFirstWord = starters.Where(starter => starter.Words.Count > 0)
            .GroupBy(starter => starter.Words[0], StringComparer.OrdinalIgnoreCase)
            .ToFrozenDictionary(group => group.Key, group => group.OrderByDescending(starter => starter.Words.Count).ToArray(), StringComparer.OrdinalIgnoreCase);
        lookup = byFirstWord.GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <summary>The starter of a line and where the rest of the line begins; null when none fits.</summary>
    public (T Value, int RestStart)? Match(string text, SourceSpan line)
    {
        var first = WordEnd(text, line.Start, line.End);
        if (!lookup.TryGetValue(text.AsSpan(line.Start, first - line.Start), out var candidates))
        {
            return null;
        }

        foreach (var (words, value) in candidates)
        {
            if (EndOf(words, text, line) is { } rest)
            {
                return (value, rest);
            }
        }

        return null;
    }

    private static int? EndOf(IReadOnlyList<string> words, string text, SourceSpan line)
    {
        var at = line.Start;
        foreach (var word in words)
        {
            while (at < line.End && char.IsWhiteSpace(text[at]))
            {
                at++;
            }

            var end = WordEnd(text, at, line.End);
            if (!text.AsSpan(at, end - at).Equals(word, StringComparison.OrdinalIgnoreCase))
            {
                return null;
            }

            at = end;
        }

        return at;
    }

    private static int WordEnd(string text, int start, int end)
    {
        var at = start;
        while (at < end && !char.IsWhiteSpace(text[at]) && text[at] is not (',' or '"'))
        {
            at++;
        }

        return at;
    }
}
