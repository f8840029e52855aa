using System.Text.RegularExpressions;

namespace ScoreRules.Tests.Binding;

/// <summary>A text with one word lost, doubled, misspelt, or changed over with the next.</summary>
/// <param name="Told">What was done, for the message of a failing test.</param>
/// <param name="At">Offset of the word.</param>
/// <param name="Text">The text after it.</param>
internal sealed partial record WordSlip(string Told, int At, string Text)
{
    /// <summary>Whether two words changed places, which may spoil a name on either side.</summary>
    public bool IsSwap => Told.Contains(" changed over at ", StringComparison.Ordinal);

    /// <summary>All such slips in a text, word by word.</summary>
    public static IEnumerable<WordSlip> In(string text)
    {
        var words = Words().Matches(text);
        for (var i = 0; i < words.Count; i++)
        {
            var (word, at, length) = (words[i].Value, words[i].Index, words[i].Length);
            yield return new WordSlip($"lost \"{word}\" at {at}", at, text.Remove(at, length));
            yield return new WordSlip($"doubled \"{word}\" at {at}", at, text.Insert(at, word + " "));
            if (length > 2 && char.IsLetter(word[0]))
            {
                var middle = at + (length / 2);
                yield return new WordSlip($"letter lost in \"{word}\" at {at}", at, text.Remove(middle, 1));
                yield return new WordSlip($"letters swapped in \"{word}\" at {at}", at, $"{text[..(middle - 1)]}{text[middle]}{text[middle - 1]}{text[(middle + 1)..]}");
            }

            if (i + 1 < words.Count && text.AsSpan(at, words[i + 1].Index - at).IndexOf('\n') < 0)
            {
                var next = words[i + 1];
                yield return new WordSlip($"\"{word}\" and \"{next.Value}\" changed over at {at}", at, $"{text[..at]}{next.Value}{text[(at + length)..next.Index]}{word}{text[(next.Index + next.Length)..]}");
            }
        }
    }

    [GeneratedRegex("[^\\s,\"]+|[,\"]", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Words();
}
