using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary>Short ways to write a finding about a line.</summary>
internal sealed class AdviceDraft(SourceText source, FailedLine line)
{
    /// <summary>An error in this line.</summary>
    public Diagnostic Error(string code, string headline, SourceSpan place, string label, params Suggestion[] suggestions) =>
        new(code, Severity.Error, headline, new Label(source.At(place), label))
        {
            Within = line.Within,
            Section = line.Section,
            Suggestions = [.. suggestions],
        };

    /// <summary>A suggestion that replaces a stretch of the line.</summary>
    public Suggestion Edit(string advice, SourceSpan place, string replacement, EditSafety safety) => new(advice, new TextEdit(source.At(place), replacement), safety);

    /// <summary>Whether the line below starts with one of these words.</summary>
    public bool NextLineStarts(params string[] words)
    {
        var next = line.Line.Number < source.LineCount ? source.Slice(source.LineSpan(line.Line.Number + 1)).Trim() : "";
        return Array.Exists(words, word => next.StartsWith(word + " ", StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>The characters of a stretch.</summary>
    public string Slice(SourceSpan place) => source.Slice(place);

    /// <summary>The expectations as a list of choices: "a, b or c", at most eight.</summary>
    public string Choices()
    {
        var words = line.Expected.Take(8).Select(expectation => expectation.Literal && expectation.Words != "," ? $"\"{expectation.Words}\"" : expectation.Words == "," ? "a comma" : expectation.Words).Distinct(StringComparer.Ordinal).ToList();
        return words.Count switch
        {
            0 => "the end of the line",
            1 => words[0],
            _ => $"{string.Join(", ", words[..^1])} or {words[^1]}",
        };
    }
}
