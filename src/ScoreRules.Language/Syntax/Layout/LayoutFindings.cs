using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Advice;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Layout;

/// <summary>Findings about where lines stand: cut off, at the edge, set in, or starting with no word the language knows.</summary>
internal sealed class LayoutFindings(SourceText source, DiagnosticBag findings)
{
    /// <summary>A clause stands at the edge right under the statement it belongs to.</summary>
    public void ClauseAtEdge(LineView line, string above) =>
        Add("SR1006", line, $"This line goes on with {above}, so it is set in", "starts at the edge", new("set it in by two spaces", Insert(line.Content.Start, "  "), EditSafety.Safe));

    /// <summary>A statement's head is set in.</summary>
    public void HeadSetIn(LineView line)
    {
        var start = source.LineSpan(line.Number).Start;
        var gap = source.At(SourceSpan.FromBounds(start, line.Content.Start));
        Add("SR1006", line, "This line starts a new statement, so it begins at the edge", "set in", new("move it to the edge", new TextEdit(gap, ""), EditSafety.Safe));
    }

    /// <summary>Lines that are cut off from their statement by a blank line, or that stand below none.</summary>
    public void CutOff(LineView[] lines, int at, string? above)
    {
        var line = lines[at];
        if (above is null)
        {
            Add("SR1005", line, "This line belongs to a statement, and there is none above it", "set in, below nothing", new("start with a line at the edge, such as \"criterion ...\""));
            return;
        }

        var blank = at - 1;
        while (blank > 0 && lines[blank - 1].Kind == LineKind.Blank)
        {
            blank--;
        }

        var from = source.LineSpan(lines[blank].Number).Start;
        var gap = source.At(SourceSpan.FromBounds(from, source.LineSpan(line.Number).Start));
        Add("SR1005", line, $"The blank line above cuts this line off from {above}", "belongs to nothing now", new("take the blank line out", new TextEdit(gap, ""), EditSafety.Safe));
    }

    /// <summary>An inner line whose first words its statement does not know.</summary>
    public void UnknownClause(LineView line, StatementBuilder statement)
    {
        var starters = statement.Spec.Lines.Select(use => use.Spec.Starter).Where(starter => starter.Length > 0).ToList();
        var (span, written, near) = Words.NearestStarter(source, line.Content, starters);
        var listed = string.Join(", ", starters.Where(starter => !Uniform.Lines.Any(use => use.Spec.Starter == starter)).Take(8));
        var edits = near.Select(name => new Suggestion($"did you mean \"{name}\"?", new TextEdit(source.At(span), name), near.Length == 1 ? EditSafety.Safe : EditSafety.Shown));
        findings.Add(new Diagnostic("SR1004", Severity.Error, $"No line of {Article(statement.Spec.Words)} starts with \"{written}\"", new Label(source.At(span), ""))
        {
            Within = statement.Title,
            Section = statement.Section,
            Notes = listed.Length == 0 ? [] : [$"a line here starts with one of: {listed}; or with because, note, source, only for, except for"],
            Suggestions = [.. edits],
        });
    }

    /// <summary>Edge lines that start with no head: a misspelt head, a word from elsewhere, or prose. Passes over all lines of a run of prose.</summary>
    public void UnknownHead(LineView[] lines, ref int at)
    {
        var line = lines[at];
        var heads = StatementTable.Own.Select(head => head.Words).Concat(["change", "drop"]).ToList();
        var (span, written, near) = Words.NearestStarter(source, line.Content, heads);
        if (HeadSynonyms.Find(source.Slice(line.Content)) is { } synonym)
        {
            var place = source.At(line.Content with { Length = synonym.Length });
            Add("SR1003", place, $"No statement starts with \"{place.Text}\"", new Suggestion($"say it with \"{synonym.Head}\"", new TextEdit(place, synonym.Head)));
        }
        else if (near.Length > 0 || source.Slice(line.Content).Split(' ').Length < 4)
        {
            var suggestions = near.Select(name => new Suggestion($"did you mean \"{name}\"?", new TextEdit(source.At(span), name), near.Length == 1 ? EditSafety.Safe : EditSafety.Shown)).ToArray();
            Add("SR1003", source.At(span), $"No statement starts with \"{written}\"", suggestions);
        }
        else
        {
            ReportProse(lines, ref at, written);
        }
    }

    private static string Article(string words) => "aeiou".Contains(words[0], StringComparison.OrdinalIgnoreCase) ? $"an {words}" : $"a {words}";

    private void ReportProse(LineView[] lines, ref int at, string written)
    {
        var first = lines[at];
        while (at + 1 < lines.Length && lines[at + 1].Kind == LineKind.Edge && StarterTables.Heads.Match(source.Text, lines[at + 1].Content) is null)
        {
            at++;
        }

        var place = source.At(first.Content.Cover(lines[at].Content));
        var mended = "philosophy\n" + string.Join('\n', place.Text.Split('\n').Select(text => "  " + text));
        Add("SR1016", first, $"This reads like prose: no statement starts with \"{written}\"", "", new Suggestion("put \"philosophy\" above it and set it in", new TextEdit(place, mended), EditSafety.Safe));
    }

    private TextEdit Insert(int at, string text) => new(source.At(new SourceSpan(at, 0)), text);

    private void Add(string code, LineView line, string headline, string label, Suggestion suggestion) =>
        findings.Add(new Diagnostic(code, Severity.Error, headline, new Label(source.At(line.Content), label)) { Suggestions = [suggestion] });

    private void Add(string code, SourceLocation place, string headline, params Suggestion[] suggestions) =>
        findings.Add(new Diagnostic(code, Severity.Error, headline, new Label(place, "")) { Suggestions = [.. suggestions] });
}
