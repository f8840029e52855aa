namespace ScoreRules.Language.Syntax.Advice;

/// <summary>Words that newcomers start a statement with, and the head that says it. Used only in messages.</summary>
internal static class HeadSynonyms
{
    private static readonly (string Written, string Head)[] Pairs =
    [
        ("bonus", "give"), ("award", "give"), ("add", "give"), ("penalty", "take"), ("deduct", "take"), ("subtract", "take"), ("cap", "never above"),
        ("floor", "never below"), ("veto", "leave out"), ("exclude", "leave out"), ("ban", "leave out"), ("define", "call"), ("judgement", "place"),
        ("raise", "place"), ("lower", "place"), ("rename", "change tiers"), ("warning", "caution"), ("warn", "caution"), ("exercise", "movement"),
        ("rule", "give"), ("factor", "criterion"), ("weight", "criterion"), ("test", "expect"), ("compute", "work out"), ("calculate", "work out"),
        ("comment", "note"), ("because", "philosophy"), ("group", "target"), ("tier", "tiers"), ("person", "profile"), ("pick", "choose"),
    ];

    /// <summary>The head meant, and how many characters were written for it; null when the first word is none of these.</summary>
    public static (string Head, int Length)? Find(string line)
    {
        var word = line.Split([' ', '\t'], 2)[0];
        foreach (var (written, head) in Pairs)
        {
            if (string.Equals(word, written, StringComparison.OrdinalIgnoreCase))
            {
                return (head, word.Length);
            }
        }

        return null;
    }
}
