using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Layout;

/// <summary>
/// Notices a head that stands in place of another: nothing below it belongs to it, and all of it to another kind of statement.
/// Reported there, it is one fault and not one for each line and each use of a name.
/// </summary>
internal sealed class ReplacedHead(SourceText source, LineView[] lines, LineFit fit)
{
    /// <summary>The kinds of statement that may have been meant; none where the head fits.</summary>
    /// <param name="head">The head as written.</param>
    /// <param name="at">Index of its line.</param>
    /// <param name="restStart">Offset just behind its words.</param>
    public IReadOnlyList<HeadSpec> Meant(HeadSpec head, int at, int restStart)
    {
        if (head.IsProse || head.Lines.IsEmpty || OverlayGrammar.KindOf(head) is not null || EndsInComma(lines[at]))
        {
            return [];
        }

        var own = Own(at);
        return own.Count == 0 || own.Exists(line => fit.GoesOn(head, line)) ? [] : [.. StatementTable.Own.Where(other => IsMeant(other, own, lines[at], restStart))];
    }

    private bool IsMeant(HeadSpec other, List<LineView> own, LineView first, int restStart) =>
        !other.IsProse && other.FirstLine.Mode != ScanMode.Text && own.TrueForAll(line => fit.GoesOn(other, line)) && !IsOneNamedLine(other, own) && fit.Reads(other.FirstLine, first, restStart);

    // "plover grip is pronated" reads like a fact of a movement; one line that begins with a name says little.
    private bool IsOneNamedLine(HeadSpec other, List<LineView> own) => own.Count == 1 && StarterTables.LinesOf(other).Match(source.Text, own[0].Content) is null;

    // The lines right below it, without those that any statement may have and those that go on after a comma.
    private List<LineView> Own(int at)
    {
        var own = new List<LineView>();
        for (var next = at + 1; next < lines.Length && lines[next].Kind == LineKind.Inner; next++)
        {
            if (!EndsInComma(lines[next - 1]) && StarterTables.Uniform.Match(source.Text, lines[next].Content) is null)
            {
                own.Add(lines[next]);
            }
        }

        return own;
    }

    private bool EndsInComma(LineView line) => line.Content.Length > 0 && source.Text[line.Content.End - 1] == ',';
}
