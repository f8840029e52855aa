namespace ScoreRules.Language.Syntax;

/// <summary>
/// Remembers, during the parse of one line, the furthest token at which something else was expected and all that
/// would have fitted there. Superpower keeps only the last alternative's expectations, so the primitives report here.
/// Nearly all lines are sound, so a line is first parsed without a record, and once more with one when it does not fit.
/// </summary>
internal sealed class FurthestFailure
{
    [ThreadStatic]
    private static FurthestFailure? current;

    private readonly List<Expectation> expected = [];
    private readonly Dictionary<int, int> nameStarts = [];

    private FurthestFailure()
    {
    }

    /// <summary>Index of the token that did not fit.</summary>
    public int Index { get; private set; } = -1;

    /// <summary>What would have fitted, in the order tried, each once.</summary>
    public IReadOnlyList<Expectation> Expected => expected;

    /// <summary>Parses a line that does not fit once more, and tells why.</summary>
    public static FurthestFailure Of(Action parse)
    {
        var record = new FurthestFailure();
        current = record;
        parse();
        current = null;
        return record;
    }

    /// <summary>Notes that a name was read from token <paramref name="start"/> up to, but without, token <paramref name="end"/>.</summary>
    public static void NoteName(int start, int end)
    {
        if (current is { } record)
        {
            record.nameStarts[end] = start;
        }
    }

    /// <summary>The first token of the name that ends just before a token; null when no name ends there.</summary>
    public int? NameBefore(int index) => nameStarts.TryGetValue(index, out var start) ? start : null;

    /// <summary>Notes that <paramref name="expectation"/> would have fitted at token <paramref name="index"/>.</summary>
    public static void Note(int index, Expectation expectation)
    {
        if (current is not { } record || index < record.Index)
        {
            return;
        }

        if (index > record.Index)
        {
            record.expected.Clear();
            record.Index = index;
        }

        if (!record.expected.Contains(expectation))
        {
            record.expected.Add(expectation);
        }
    }
}
