namespace ScoreRules.Evidence;

/// <summary>The two sides of a comparison in one order, whichever is spoken of first.</summary>
internal static class Sides
{
    /// <summary>Both, by name.</summary>
    public static (string, string) Of(string first, string second) => IsInOrder(first, second) ? (first, second) : (second, first);

    /// <summary>Whether they are in that order already.</summary>
    public static bool IsInOrder(string first, string second) => string.CompareOrdinal(first, second) < 0;
}
