namespace ScoreRules.Language.Text;

/// <summary>A stretch of a text, in UTF-16 units from its start. A length of zero marks a gap between two characters.</summary>
/// <param name="Start">Offset of the first character, 0 or more.</param>
/// <param name="Length">Number of UTF-16 units, 0 or more.</param>
public readonly record struct SourceSpan(int Start, int Length)
{
    /// <summary>Offset just behind the last character.</summary>
    public int End => Start + Length;

    /// <summary>The span that begins at <paramref name="start"/> and ends just before <paramref name="end"/>.</summary>
    public static SourceSpan FromBounds(int start, int end) => new(start, Math.Max(0, end - start));

    /// <summary>The smallest span that covers this one and <paramref name="other"/>.</summary>
    public SourceSpan Cover(SourceSpan other) => FromBounds(Math.Min(Start, other.Start), Math.Max(End, other.End));

    /// <summary>Whether <paramref name="other"/> lies inside this span.</summary>
    public bool Contains(SourceSpan other) => Start <= other.Start && other.End <= End;
}
