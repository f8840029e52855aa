namespace ScoreRules.Publishing.Editions;

/// <summary>Names with numbers in them, each run of digits compared as a number: 3.9 stands before 3.10.</summary>
internal static class NumberedNames
{
    /// <summary>The order.</summary>
    public static IComparer<string> Order { get; } = Comparer<string>.Create(Compare);

    private static int Compare(string left, string right)
    {
        var (i, j) = (0, 0);
        while (i < left.Length && j < right.Length)
        {
            var (one, other) = (Piece(left, ref i), Piece(right, ref j));
            var order = char.IsAsciiDigit(one[0]) && char.IsAsciiDigit(other[0]) ? Number(one, other) : string.CompareOrdinal(one, other);
            if (order != 0)
            {
                return order;
            }
        }

        return (left.Length - i) - (right.Length - j) is var rest && rest != 0 ? rest : string.CompareOrdinal(left, right);
    }

    private static int Number(string one, string other)
    {
        var (left, right) = (one.TrimStart('0'), other.TrimStart('0'));
        return left.Length != right.Length ? left.Length - right.Length : string.CompareOrdinal(left, right);
    }

    private static string Piece(string text, ref int at)
    {
        var (start, digits) = (at, char.IsAsciiDigit(text[at]));
        while (at < text.Length && char.IsAsciiDigit(text[at]) == digits)
        {
            at++;
        }

        return text[start..at];
    }
}
