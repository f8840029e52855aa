using System.Globalization;
using System.Text;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Diagnostics;

/// <summary>Prints findings for people: place, line with carets, remarks, what to do. Plain text; meaning never rests on colour.</summary>
public static class DiagnosticText
{
    private const int WidestLine = 160;
    private const int LongestSentence = 600;

    /// <summary>One finding in full, without a final line end.</summary>
    public static string Full(Diagnostic diagnostic)
    {
        var text = new StringBuilder();
        text.Append(Word(diagnostic.Severity)).Append(' ').Append(diagnostic.Code).Append(": ").Append(Clip(diagnostic.Headline)).Append('\n');
        text.Append("  --> ").Append(Place(diagnostic.Location)).Append(Around(diagnostic)).Append('\n');
        var labels = diagnostic.Others.Where(label => label.Location.Path == diagnostic.Location.Path).Append(diagnostic.Primary)
            .OrderBy(label => label.Location.Span.Start).ToList();
        var gutter = Number(labels.Max(label => label.Location.Line)).Length;
        for (var i = 0; i < labels.Count; i++)
        {
            var sameLine = i > 0 && labels[i - 1].Location.Line == labels[i].Location.Line && labels[i].Location.Source.LineSpan(labels[i].Location.Line).Length <= WidestLine;
            AppendLabel(text, labels[i], gutter, ReferenceEquals(labels[i], diagnostic.Primary) ? '^' : '-', showLine: !sameLine);
        }

        foreach (var other in diagnostic.Others.Where(label => label.Location.Path != diagnostic.Location.Path))
        {
            text.Append("  see ").Append(Place(other.Location)).Append(": ").Append(other.Text).Append('\n');
        }

        AppendRemarks(text, diagnostic, gutter);
        return text.ToString().TrimEnd('\n');
    }

    /// <summary>One finding on one line: <c>file:line:column: error SR2003: headline</c>.</summary>
    public static string Short(Diagnostic diagnostic) =>
        $"{Place(diagnostic.Location)}: {Word(diagnostic.Severity)} {diagnostic.Code}: {Clip(diagnostic.Headline)}";

    /// <summary>What a severity is called.</summary>
    public static string Word(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "note",
    };

    private static string Place(SourceLocation place) => $"{place.Path}:{Number(place.Line)}:{Number(place.Column)}";

    private static string Around(Diagnostic diagnostic)
    {
        var within = diagnostic.Within is null ? "" : $"   in {Clip(diagnostic.Within)}";
        return diagnostic.Section is null ? within : $"{within}{(within.Length == 0 ? "   " : ", ")}under \"{Clip(diagnostic.Section)}\"";
    }

    // Two remarks on one line share the line: each has its marks below it.
    private static void AppendLabel(StringBuilder text, Label label, int gutter, char mark, bool showLine)
    {
        var source = label.Location.Source;
        var line = source.LineSpan(label.Location.Line);
        var from = label.Location.Span.Start - line.Start;
        var shown = Window(source.Slice(line), from, out var cut);
        var before = ColumnsUpTo(shown, from - cut);
        var width = Math.Max(1, ColumnsUpTo(shown, label.Location.Span.End - line.Start - cut) - before);
        if (showLine)
        {
            text.Append(' ', gutter).Append(" |\n");
            text.Append(Number(label.Location.Line).PadLeft(gutter)).Append(" | ").Append(DisplayColumns.Printable(shown)).Append('\n');
        }

        text.Append(' ', gutter).Append(" | ").Append(' ', before).Append(mark, width);
        text.Append(label.Text.Length == 0 ? "" : " ").Append(label.Text).Append('\n');
    }

    // Measured from the start of the line, because a tab is as wide as what stands before it lets it be.
    private static int ColumnsUpTo(string line, int offset) => DisplayColumns.Width(DisplayColumns.Printable(line[..Math.Clamp(offset, 0, line.Length)]));

    // Very long lines are shown around the place only.
    private static string Window(string line, int from, out int cut)
    {
        cut = line.Length <= WidestLine ? 0 : Math.Clamp(from - (WidestLine / 2), 0, line.Length - WidestLine);
        return line.Length <= WidestLine ? line : line.Substring(cut, WidestLine);
    }

    private static void AppendRemarks(StringBuilder text, Diagnostic diagnostic, int gutter)
    {
        foreach (var note in diagnostic.Notes)
        {
            text.Append("note: ").Append(Clip(note)).Append('\n');
        }

        foreach (var suggestion in diagnostic.Suggestions)
        {
            text.Append("help: ").Append(Clip(suggestion.Advice)).Append('\n');
            if (suggestion.Edit is { } edit)
            {
                AppendEdit(text, edit, gutter);
            }
        }
    }

    private static void AppendEdit(StringBuilder text, TextEdit edit, int gutter)
    {
        var source = edit.Location.Source;
        var first = source.LineSpan(edit.Location.Line);
        var last = source.LineSpan(source.LineOf(edit.Location.Span.End));
        var mended = source.Text[first.Start..edit.Location.Span.Start] + edit.Replacement + source.Text[edit.Location.Span.End..Math.Max(last.End, edit.Location.Span.End)];
        var number = edit.Location.Line;
        foreach (var line in mended.Split('\n').Take(4))
        {
            var shown = Window(line, number == edit.Location.Line ? edit.Location.Span.Start - first.Start : 0, out _);
            text.Append(Number(number++).PadLeft(gutter)).Append(" | ").Append(DisplayColumns.Printable(shown.TrimEnd('\r'))).Append('\n');
        }
    }

    // A name of a million letters is shown by its beginning: output stays bounded.
    private static string Clip(string text) => text.Length <= LongestSentence ? text : text[..LongestSentence] + "…";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
