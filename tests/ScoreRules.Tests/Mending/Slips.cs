using CsCheck;

namespace ScoreRules.Tests.Mending;

/// <summary>Slips of the hand: one at a time, anywhere in a text.</summary>
internal static class Slips
{
    private static readonly Func<string, int, string>[] Kinds =
    [
        (text, at) => text.Remove(at, 1),
        (text, at) => text.Insert(at, text[at].ToString()),
        (text, at) => at + 1 < text.Length && char.IsLetter(text[at]) && char.IsLetter(text[at + 1]) ? $"{text[..at]}{text[at + 1]}{text[at]}{text[(at + 2)..]}" : text,
        (text, at) => Word(text, at) is var (start, end) ? text.Remove(start, end - start) : text,
        (text, at) => Word(text, at) is var (start, end) ? text.Insert(start, text[start..end] + " ") : text,
        (text, at) => Replace(text, at, ", ", " and "),
        (text, at) => Replace(text, at, " is ", " is not "),
        (text, at) => Replace(text, at, "%", ""),
        (text, at) => Replace(text, at, " points", ""),
        (text, at) => Replace(text, at, " s\n", "s\n"),
        (text, at) => Replace(text, at, ".", ","),
        (text, at) => Replace(text, at, "\n  ", "\n"),
        (text, at) => Replace(text, at, "\n  ", "\n\n  "),
        (text, at) => Replace(text, at, "\n\n", "\n\n  "),
        (text, at) => Replace(text, at, " ", "\u00a0"),
        (text, at) => Replace(text, at, "\n  ", ",\n  "),
        (text, at) => Replace(text, at, " is at least ", " >= "),
        (text, at) => Replace(text, at, " is ", " "),
    ];

    /// <summary>A text with one slip.</summary>
    public static Gen<string> In(string text) => Gen.Select(Gen.Int[0, Kinds.Length - 1], Gen.Int[0, text.Length - 1], (kind, at) => Kinds[kind](text, at));

    private static (int Start, int End)? Word(string text, int at)
    {
        if (char.IsWhiteSpace(text[at]))
        {
            return null;
        }

        var start = text.LastIndexOfAny([' ', '\n'], at) + 1;
        var end = text.IndexOfAny([' ', '\n'], at);
        end = end < 0 ? text.Length : end;
        return (start, text[end - 1] == ',' && end - start > 1 ? end - 1 : end);
    }

    private static string Replace(string text, int from, string old, string with)
    {
        var at = text.IndexOf(old, from, StringComparison.Ordinal);
        return at < 0 ? text : text.Remove(at, old.Length).Insert(at, with);
    }
}
