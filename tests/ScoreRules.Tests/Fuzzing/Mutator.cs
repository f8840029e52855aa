using ScoreRules.Benchmarks.Workloads;

namespace ScoreRules.Tests.Fuzzing;

/// <summary>Breaks sound texts; the same seed breaks them in the same way on every machine.</summary>
/// <param name="corpus">The sound texts.</param>
/// <param name="numbers">Where the choices come from.</param>
internal sealed class Mutator(string[] corpus, SeededNumbers numbers)
{
    private const int MostTexts = 4;
    private const int MostChanges = 6;
    private const int LongestStretch = 24;

    private static readonly string[] Signs =
        ["\n", "\n\n", "\r", "\t", " ", ",", ";", "\"", "\"\"", "“", "%", "°", "-", ".", "1", "-0", "1e9", "99999999999999999999", "\0", "\u00A0", "\uFEFF", "\u0301", "\uD83D", "é", "is ", "not ", "and ", "because ", "but ", "31 February 2030"];

    /// <summary>One to four sound texts, broken in one to six places.</summary>
    public string Next()
    {
        var text = string.Join("\n\n", Enumerable.Range(0, 1 + numbers.Below(MostTexts)).Select(_ => corpus[numbers.Below(corpus.Length)]));
        for (var changes = 1 + numbers.Below(MostChanges); changes > 0; changes--)
        {
            text = Change(text);
        }

        return text;
    }

    private string Change(string text)
    {
        var (from, to) = Stretch(text);
        return numbers.Below(8) switch
        {
            0 => text.Insert(from, Signs[numbers.Below(Signs.Length)]),
            1 => text.Remove(from, to - from),
            2 => text[..from] + Signs[numbers.Below(Signs.Length)] + text[to..],
            3 => text.Insert(from, text[from..to]),
            4 => WithoutWord(text, from),
            5 => text[..from] + Elsewhere() + text[to..],
            6 => text[..from] + (char)numbers.Below(char.MaxValue + 1) + text[from..],
            _ => text[..from],
        };
    }

    private (int From, int To) Stretch(string text)
    {
        var from = numbers.Below(text.Length + 1);
        return (from, Math.Min(text.Length, from + 1 + numbers.Below(LongestStretch)));
    }

    private string Elsewhere()
    {
        var other = corpus[numbers.Below(corpus.Length)];
        var (from, to) = Stretch(other);
        return other[from..to];
    }

    private static string WithoutWord(string text, int near)
    {
        var start = text.LastIndexOf(' ', Math.Max(0, near - 1)) + 1;
        var end = text.IndexOfAny([' ', '\n'], Math.Min(start, text.Length));
        return end < 0 ? text[..start] : text.Remove(start, end - start);
    }
}
