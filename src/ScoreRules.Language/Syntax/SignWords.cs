using System.Collections.Frozen;

namespace ScoreRules.Language.Syntax;

/// <summary>Signs that people write for words, and the words. Used only in messages.</summary>
internal static class SignWords
{
    private static readonly FrozenDictionary<string, string> Words = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        [">"] = "is more than",
        ["<"] = "is less than",
        [">="] = "is at least",
        ["≥"] = "is at least",
        ["<="] = "is at most",
        ["≤"] = "is at most",
        ["="] = "is",
        ["=="] = "is",
        ["!="] = "is other than",
        ["<>"] = "is other than",
        ["≠"] = "is other than",
        ["#"] = "note",
        [";"] = ",",
        ["½"] = "0.5",
        ["¼"] = "0.25",
        ["¾"] = "0.75",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The sign that begins at a place: two characters where those two are one sign.</summary>
    public static string SignAt(string text, int at, int end)
    {
        var two = at + 2 <= end ? text.Substring(at, 2) : "";
        return Words.ContainsKey(two) ? two : text.Substring(at, 1);
    }

    /// <summary>The words for a sign, or null; without "is" where the line has its verb already.</summary>
    public static string? Find(string sign, string before)
    {
        var words = Words.GetValueOrDefault(sign);
        var hasVerb = before.EndsWith(" is", StringComparison.OrdinalIgnoreCase) || before.EndsWith(" means", StringComparison.OrdinalIgnoreCase);
        return hasVerb && words is not null && words.StartsWith("is ", StringComparison.Ordinal) ? words[3..] : words;
    }

    /// <summary>The words with a blank on each side where they would touch a neighbour.</summary>
    public static string Spaced(string words, string before, char after)
    {
        var apart = words != ",";
        var left = apart && before.Length > 0 && !char.IsWhiteSpace(before[^1]) ? " " : "";
        return left + words + (apart && !char.IsWhiteSpace(after) ? " " : "");
    }

    /// <summary>What to do about a sign that stands for no word.</summary>
    public static string Advice(string sign) => sign switch
    {
        "&" => "write a comma in a list, \"and\" in a condition",
        "—" or "–" => "leave it out; a minus is written -, and a reason has a line of its own: \"because ...\"",
        ":" => "leave it out",
        _ => "leave it out, or put the whole name in double quotes",
    };
}
