using ScoreRules.Language.Text;

namespace ScoreRules.Report.Views;

/// <summary>The order in which a house reads: the file with its name first, then its other files, then the houses it builds on, then what all share.</summary>
internal sealed class ReadingOrder(string? first) : IComparer<SourceLocation>
{
    /// <inheritdoc/>
    public int Compare(SourceLocation? x, SourceLocation? y)
    {
        var floors = y!.Source.Floor.CompareTo(x!.Source.Floor);
        var named = (y.Path == first).CompareTo(x.Path == first);
        return floors != 0 ? floors : named != 0 ? named : SourceLocation.Compare(x, y);
    }
}
