using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary>The fixed words that may follow "is" or "has". Misspelt, they are read as the beginning of a name, so messages look for them.</summary>
internal static class Openers
{
    private static readonly string[] Is =
        ["at least", "at most", "more than", "less than", "between", "one of", "none of", "other than", "known", "unknown"];

    private static readonly string[] Has = ["any of", "all of", "none of"];

    /// <summary>The opener that the first of these words nearly are, and how many words were written for it; null when they are one, or near none.</summary>
    public static (string Opener, int Words)? Misspelt(IReadOnlyList<string> words, bool afterHas)
    {
        var best = (Opener: "", Words: 0, Distance: int.MaxValue);
        foreach (var opener in afterHas ? Has : Is)
        {
            for (var count = 1; count <= Math.Min(2, words.Count); count++)
            {
                var written = string.Join(' ', words.Take(count)).ToLowerInvariant();
                var distance = NameDistance.Between(written, opener, Math.Max(1, opener.Length / 4));
                if (distance < best.Distance)
                {
                    best = (opener, count, distance);
                }
            }
        }

        return best.Distance is > 0 and < int.MaxValue ? (best.Opener, best.Words) : null;
    }
}
