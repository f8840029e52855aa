namespace ScoreRules.Language.Syntax.Advice;

/// <summary>Numbers written as words. Used only in messages.</summary>
internal static class NumberWords
{
    private static readonly string[] Words =
        ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

    /// <summary>The digits for a word; null when it is no number.</summary>
    public static string? Find(string word)
    {
        var number = Array.FindIndex(Words, known => string.Equals(known, word, StringComparison.OrdinalIgnoreCase));
        return number < 0 ? null : number.ToString(System.Globalization.CultureInfo.InvariantCulture);
    }
}
