using System.Text.RegularExpressions;

namespace ScoreRules.Tests.Binding;

/// <summary>A text with one word lost, doubled, or misspelt.</summary>
/// <param name="Told">What was done, for the message of a failing test.</param>
/// <param name="Text">The text after it.</param>
internal sealed partial record WordSlip(string Told, string Text)
{
    /// <summary>All such slips in a text, word by word.</summary>
    public static IEnumerable<WordSlip> In(string text)
    {
        foreach (Match word in Words().Matches(text))
        {
            var (at, length) = (word.Index, word.Length);
            yield return new WordSlip($"lost \"{word.Value}\" at {at}", text.Remove(at, length));
            yield return new WordSlip($"doubled \"{word.Value}\" at {at}", text.Insert(at, word.Value + " "));
            if (length > 2)
            {
                var middle = at + (length / 2);
                yield return new WordSlip($"letter lost in \"{word.Value}\" at {at}", text.Remove(middle, 1));
                yield return new WordSlip($"letters swapped in \"{word.Value}\" at {at}", $"{text[..(middle - 1)]}{text[middle]}{text[middle - 1]}{text[(middle + 1)..]}");
            }
        }
    }

    [GeneratedRegex("[^\\s,\"]+|[,\"]", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Words();
}
