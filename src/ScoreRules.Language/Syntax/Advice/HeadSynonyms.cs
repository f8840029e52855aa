namespace ScoreRules.Language.Syntax.Advice;

/// <summary>Words that newcomers start a statement with, and the head that says it. Used only in messages.</summary>
internal static class HeadSynonyms
{
    // Written, head, and whether what follows has the same form under both, so that reading can go on.
    private static readonly (string Written, string Head, bool SameForm)[] Pairs =
    [
        ("bonus", "give", false), ("award", "give", false), ("add", "give", false), ("penalty", "take", false), ("deduct", "take", false),
        ("subtract", "take", false), ("cap", "never above", false), ("floor", "never below", false), ("veto", "leave out", false),
        ("exclude", "leave out", false), ("leave", "leave out", true), ("work", "work out", true), ("cancel", "cancel out", true), ("ban", "leave out", false), ("define", "call", true), ("concept", "call", true), ("judgement", "place", true),
        ("raise", "place", false), ("lower", "place", false), ("warning", "caution", true), ("warn", "caution", true), ("exercise", "movement", true),
        ("lift", "movement", true), ("factor", "criterion", true), ("principle", "criterion", true), ("test", "expect", true),
        ("compute", "work out", true), ("calculate", "work out", true), ("comment", "note", true), ("remark", "note", true), ("group", "target", true),
        ("tier", "tiers", false), ("person", "profile", true), ("client", "profile", true), ("pick", "choose", false), ("column", "attribute", true),
        ("property", "attribute", true),
    ];

    private static readonly (string Written, string Advice)[] Others =
    [
        ("rule", "start with what it does, such as \"give 4 points\", \"never above ...\" or \"leave out\"; its name stands below: \"named ...\""),
        ("if", "start with what happens, such as \"give 4 points\", and set the condition in below it: \"when ...\""),
        ("when", "start with what happens, such as \"give 4 points\", and set the condition in below it: \"when ...\""),
        ("unless", "start with what happens, such as \"give 4 points\", and set the exception in below it: \"unless ...\""),
        ("rename", "write \"change tiers\" and below it, set in, \"... is now called ...\""),
        ("weight", "write \"criterion\" and its name, and below it, set in, \"counts 10\""),
        ("because", "set it in, right below the statement that it explains"),
    ];

    /// <summary>What to say about a line that starts with such a word; null when it starts with none of them.</summary>
    public static (string Written, string? Head, string Advice, bool SameForm)? Find(string line)
    {
        var word = line.Split([' ', '\t'], 2)[0];
        foreach (var (written, head, sameForm) in Pairs)
        {
            if (string.Equals(word, written, StringComparison.OrdinalIgnoreCase))
            {
                return (word, head, $"say it with \"{head}\"", sameForm);
            }
        }

        var other = Array.Find(Others, pair => string.Equals(word, pair.Written, StringComparison.OrdinalIgnoreCase));
        return other.Advice is null ? null : (word, null, other.Advice, false);
    }
}
