namespace ScoreRules.Language.Syntax.Advice;

/// <summary>A mistyped "is" or "has": too short to be told from a word of a name by its distance, so its letters are compared.</summary>
internal static class VerbSlip
{
    private static readonly string[] Verbs = ["is", "has"];
    private static readonly string[] Words = ["a", "as", "ash", "ah"];

    /// <summary>The verb meant; null when the word is no such slip.</summary>
    /// <param name="word">The word.</param>
    /// <param name="afterName">Whether the name before it is known to end there, so that the word cannot be part of it.</param>
    public static string? Meant(string word, bool afterName = false)
    {
        var lower = word.ToLowerInvariant();
        return !afterName && Words.Contains(lower, StringComparer.Ordinal)
            ? null
            : Array.Find(Verbs, verb => lower != verb && lower.Length <= verb.Length + 1 && lower.All(letter => verb.Contains(letter, StringComparison.Ordinal)));
    }
}
