using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Layout;

/// <summary>
/// Holds safe edits to their promise: each is made on a copy of its statement, and one that does not take its finding
/// away, or that brings another fault, is only shown. Nobody can foresee every way in which a line can be wrong.
/// </summary>
internal sealed class EditProof(SourceText source, Func<SourceText, ImmutableArray<Diagnostic>> parse)
{
    private const int MostProved = 200;
    private const int LongestCopy = 10_000;
    private readonly LineView[] lines = LineView.Of(source);
    private int proved;

    /// <summary>The finding, with edits that do not keep the promise marked as shown only.</summary>
    public Diagnostic Check(Diagnostic finding) =>
        finding.Suggestions.Any(IsSafe) ? finding with { Suggestions = [.. finding.Suggestions.Select(suggestion => IsSafe(suggestion) && !Holds(finding, suggestion.Edit!) ? suggestion with { Safety = EditSafety.Shown } : suggestion)] } : finding;

    private static bool IsSafe(Suggestion suggestion) => suggestion is { Safety: EditSafety.Safe, Edit: not null };

    private bool Holds(Diagnostic finding, TextEdit edit)
    {
        var copied = Around(finding.Location.Span.Cover(edit.Location.Span));
        if (copied.Length > LongestCopy || proved++ >= MostProved)
        {
            return false;
        }

        var moved = edit with { Location = source.At(new SourceSpan(edit.Location.Span.Start - copied.Start, edit.Location.Span.Length)) };
        var text = source.Slice(copied);
        var before = parse(new SourceText(source.Path, text));
        var mended = new SourceText(source.Path, TextEdits.Apply(text, [moved]));
        var after = parse(mended).Where(found => !WasHidden(finding, found, mended, moved)).ToList();
        return after.Count <= before.Length && after.TrueForAll(found => before.Any(known => known.Code == found.Code)) && !after.Exists(found => IsSame(found, finding, copied.Start));
    }

    private static bool IsSame(Diagnostic found, Diagnostic finding, int offset) =>
        found.Code == finding.Code && found.Location.Span.Start == finding.Location.Span.Start - offset && found.Headline == finding.Headline;

    // A fault that could not be seen while the other one stood there is not the edit's doing: words left of a bad sign, and
    // lines that a statement lacks besides. Quotes, though, may swallow such a line.
    private static bool WasHidden(Diagnostic finding, Diagnostic found, SourceText mended, TextEdit edit) => finding.Code.StartsWith("SR0", StringComparison.Ordinal)
        ? found.Location.Line != mended.LineOf(edit.Location.Span.Start) || found.Location.Span.Start < edit.Location.Span.Start
        : found.Code is "SR1007" or "SR1015" && finding.Code != "SR1013";

    // From the head of the statement above to where the next one, or a blank line, begins.
    private SourceSpan Around(SourceSpan place)
    {
        var first = source.LineOf(place.Start);
        while (first > 1 && !IsHead(first))
        {
            first--;
        }

        var last = source.LineOf(place.End);
        while (last < lines.Length && lines[last].Kind != LineKind.Blank && !IsHead(last + 1))
        {
            last++;
        }

        return SourceSpan.FromBounds(source.LineSpan(first).Start, source.LineSpan(last).End);
    }

    private bool IsHead(int number) => lines[number - 1].Kind == LineKind.Edge && StarterTables.Heads.Match(source.Text, lines[number - 1].Content) is not null;
}
