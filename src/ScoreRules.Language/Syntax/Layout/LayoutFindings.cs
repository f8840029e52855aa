using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Layout;

/// <summary>Findings about where lines stand: cut off, at the edge, or set in.</summary>
internal sealed class LayoutFindings(SourceText source, DiagnosticBag findings)
{
    private const string Indent = "  ";

    /// <summary>Clauses stand at the edge right under the statement they belong to. A run of them is one slip.</summary>
    /// <param name="lines">All lines of the file.</param>
    /// <param name="first">Index of the first of them.</param>
    /// <param name="last">Index of the last.</param>
    /// <param name="above">What messages call the statement.</param>
    public void ClauseAtEdge(LineView[] lines, int first, int last, string above)
    {
        var headline = first == last ? $"This line goes on with {above}, so it is set in" : $"These {last - first + 1} lines go on with {above}, so they are set in";
        Add("SR1006", lines[first], headline, first == last ? "starts at the edge" : "the first of them", new("set it in by two spaces", SetIn(lines, first, first, last), EditSafety.Safe));
    }

    /// <summary>Clauses stand at the edge below a blank line that ended their statement.</summary>
    public void CutOffAtEdge(LineView[] lines, int first, int last, string above)
    {
        var run = first == last ? "This line goes" : "These lines go";
        Add("SR1005", lines[first], $"{run} on with {above}, but the blank line ended it", "belongs to nothing now", new("take the blank line out and set it in by two spaces", SetIn(lines, FirstBlank(lines, first), first, last), EditSafety.Safe));
    }

    /// <summary>A statement's head is set in.</summary>
    public void HeadSetIn(LineView line)
    {
        var start = source.LineSpan(line.Number).Start;
        var gap = source.At(SourceSpan.FromBounds(start, line.Content.Start));
        Add("SR1006", line, "This line starts a new statement, so it begins at the edge", "set in", new("move it to the edge", new TextEdit(gap, ""), EditSafety.Safe));
    }

    /// <summary>A line that is cut off from its statement by a blank line.</summary>
    public void CutOff(LineView[] lines, int at, string above)
    {
        var line = lines[at];
        var from = source.LineSpan(lines[FirstBlank(lines, at)].Number).Start;
        var gap = source.At(SourceSpan.FromBounds(from, source.LineSpan(line.Number).Start));
        Add("SR1005", line, $"The blank line above cuts this line off from {above}", "belongs to nothing now", new("take the blank line out", new TextEdit(gap, ""), EditSafety.Safe));
    }

    private static int FirstBlank(LineView[] lines, int below)
    {
        var blank = below - 1;
        while (blank > 0 && lines[blank - 1].Kind == LineKind.Blank)
        {
            blank--;
        }

        return blank;
    }

    private TextEdit SetIn(LineView[] lines, int from, int first, int last)
    {
        var start = source.LineSpan(lines[from].Number).Start;
        var mended = string.Join('\n', lines[first..(last + 1)].Select(line => Indent + source.Slice(line.Content)));
        return new TextEdit(source.At(SourceSpan.FromBounds(start, lines[last].Content.End)), mended);
    }

    private void Add(string code, LineView line, string headline, string label, Suggestion suggestion) =>
        findings.Add(new Diagnostic(code, Severity.Error, headline, new Label(source.At(line.Content), label)) { Suggestions = [suggestion] });
}
