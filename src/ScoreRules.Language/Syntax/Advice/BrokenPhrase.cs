using System.Collections.Immutable;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary>Fixed words of which one is lost or wrong: <c>described how ...</c>, <c>different by region</c>, <c>we may be right</c>.</summary>
internal static class BrokenPhrase
{
    private const int MostOffered = 3;

    /// <summary>The phrases that these words begin with but for one word, and how many words were written for each; none when too many would do.</summary>
    public static ImmutableArray<(string Phrase, int Written)> Find(IReadOnlyList<string> words, IEnumerable<string> phrases)
    {
        var found = phrases.Distinct(StringComparer.Ordinal).Select(phrase => (phrase, Written(words, phrase.Split(' ')))).Where(pair => pair.Item2 > 0).ToImmutableArray();
        return found.Length > MostOffered ? [] : found;
    }

    // A wrong last word may as well be the next word after a lost one, so it is left alone.
    private static int Written(IReadOnlyList<string> words, string[] phrase)
    {
        for (var broken = phrase.Length - 1; broken >= 0 && phrase.Length > 1; broken--)
        {
            if (Begin(words, phrase.Where((_, i) => i != broken)))
            {
                return phrase.Length - 1;
            }

            if (broken < phrase.Length - 1 && words.Count >= phrase.Length && Begin(words.Select((word, i) => i == broken ? phrase[i] : word), phrase))
            {
                return phrase.Length;
            }
        }

        return 0;
    }

    private static bool Begin(IEnumerable<string> words, IEnumerable<string> with)
    {
        var wanted = with.ToList();
        return words.Take(wanted.Count).SequenceEqual(wanted, StringComparer.OrdinalIgnoreCase);
    }
}
