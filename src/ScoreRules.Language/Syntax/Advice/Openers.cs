using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary>The fixed words that may follow "is" or "has". Misspelt or said otherwise, they are read as the beginning of a name, so messages look for them.</summary>
internal static class Openers
{
    private static readonly string[] Is =
        ["at least", "at most", "more than", "less than", "between", "one of", "none of", "other than", "known", "unknown"];

    private static readonly string[] Has = ["any of", "all of", "none of"];

    private static readonly string[] Verdicts = ["about the same as", "too unclear to compare with", "different by region from"];

    private static readonly (string Written, string Opener)[] IsSynonyms =
    [
        ("above", "more than"), ("over", "more than"), ("greater than", "more than"), ("higher than", "more than"), ("bigger than", "more than"),
        ("longer than", "more than"), ("below", "less than"), ("under", "less than"), ("lower than", "less than"), ("smaller than", "less than"),
        ("fewer than", "less than"), ("shorter than", "less than"), ("up to", "at most"), ("minimum", "at least"), ("maximum", "at most"), ("from", "between"),
        ("any of", "one of"), ("either", "one of"), ("some of", "one of"), ("neither", "none of"), ("different from", "other than"), ("anything but", "other than"),
    ];

    private static readonly (string Written, string Opener)[] HasSynonyms =
        [("one of", "any of"), ("some of", "any of"), ("either", "any of"), ("both", "all of"), ("neither", "none of")];

    /// <summary>The opener that the first of these words stand for, and how many words were written for it; null when they are one, or near none.</summary>
    public static (string Opener, int Words)? Meant(IReadOnlyList<string> words, bool afterHas)
    {
        foreach (var (written, opener) in afterHas ? HasSynonyms : IsSynonyms)
        {
            var count = written.Split(' ').Length;
            if (string.Equals(string.Join(' ', words.Take(count)), written, StringComparison.OrdinalIgnoreCase))
            {
                return (opener, count);
            }
        }

        return Misspelt(words, afterHas ? Has : Is);
    }

    /// <summary>The same for what a study found: one word of the fixed words may be lost or wrong.</summary>
    public static (string Opener, int Words)? Verdict(IReadOnlyList<string> words) =>
        BrokenPhrase.Find(words, Verdicts) is [var only] ? only : Misspelt(words, Verdicts);

    private static (string Opener, int Words)? Misspelt(IReadOnlyList<string> words, string[] openers)
    {
        var best = (Opener: "", Words: 0, Distance: int.MaxValue);
        foreach (var opener in openers)
        {
            for (var count = 1; count <= Math.Min(2, words.Count); count++)
            {
                var distance = PhraseDistance.Between(string.Join(' ', words.Take(count)), opener);
                best = distance < best.Distance ? (opener, count, distance) : best;
            }
        }

        return best.Distance is > 0 and < int.MaxValue ? (best.Opener, best.Words) : null;
    }
}
