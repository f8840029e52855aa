namespace ScoreRules.Language.Text;

/// <summary>A stretch of a composed text and what it was taken from.</summary>
/// <param name="Start">Where it begins in the composed text.</param>
/// <param name="Length">How long it is there.</param>
/// <param name="Source">The text it was taken from, or which it stands for.</param>
/// <param name="Taken">The stretch of that text.</param>
/// <param name="IsCopy">Whether it is a copy; otherwise it was written in place of that stretch.</param>
internal sealed record TextPiece(int Start, int Length, SourceText Source, SourceSpan Taken, bool IsCopy)
{
    /// <summary>Offset just behind it in the composed text.</summary>
    public int End => Start + Length;

    /// <summary>Where a place of the composed text comes from; what runs on into the next piece is cut off.</summary>
    public SourceLocation Origin(SourceSpan span)
    {
        if (!IsCopy)
        {
            return Source.At(Taken);
        }

        var start = Math.Clamp(span.Start - Start, 0, Length);
        var end = Math.Clamp(span.End - Start, start, Length);
        return Source.At(SourceSpan.FromBounds(Taken.Start + start, Taken.Start + end));
    }
}
