using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue.Csv;

/// <summary>The words of rule text that a cell may hold or begin with.</summary>
internal static class CellWords
{
    /// <summary>Says that the value is not known.</summary>
    public const string Unknown = "unknown";

    /// <summary>Says that a list is empty.</summary>
    public const string Nothing = "nothing";

    private const string But = "but";
    private const string Guess = "at a guess";

    /// <summary>Takes <c>but</c> and <c>at a guess</c> off the beginning of a cell, in this order.</summary>
    public static (bool IsBut, bool IsGuess, CsvCell Value) Open(CsvCell cell)
    {
        var isBut = TakeOff(ref cell, But);
        var isGuess = TakeOff(ref cell, Guess);
        return (isBut, isGuess, cell);
    }

    /// <summary>Whether a cell says just this word.</summary>
    public static bool Says(CsvCell cell, string word) => cell.Span.Length == word.Length && NameText.Same(cell.Text, word);

    private static bool TakeOff(ref CsvCell cell, string words)
    {
        var raw = cell.Raw;
        if (raw.Length <= words.Length || !char.IsWhiteSpace(raw[words.Length]) || !raw.StartsWith(words, StringComparison.OrdinalIgnoreCase))
        {
            return false;
        }

        cell = cell.Part(words.Length, raw.Length);
        return true;
    }
}
