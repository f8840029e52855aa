using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary><c>expect A is better than B</c>, <c>expect A is below B</c>: places are told with "above" alone.</summary>
internal static class ClaimAdvice
{
    private static readonly string[] Above = ["higher than", "better than", "over", "ahead of", "before", "stronger than"];
    private static readonly string[] Below = ["lower than", "worse than", "below", "under", "behind", "after"];

    public static Diagnostic? Find(AdviceDraft draft, FailedLine line)
    {
        if (line.Spec.Starter is not ("expect" or "ask why") || line.KindBefore() != TokenKind.Is || !line.Wants("above"))
        {
            return null;
        }

        if (Array.Find(Above, words => Stands(line, words)) is { } above)
        {
            var place = Place(line, above);
            return draft.Error("SR1002", $"\"{draft.Slice(place)}\" does not fit here", place, "expected \"above\"", draft.Edit("write \"above\"", place, "above", EditSafety.Safe));
        }

        return Array.Find(Below, words => Stands(line, words)) is { } below ? Exchange(draft, line, below) : null;
    }

    private static Diagnostic Exchange(AdviceDraft draft, FailedLine line, string below)
    {
        var second = line.Index + below.Split(' ').Length;
        var end = line.Tokens.FindIndex(second, token => token.Kind == TokenKind.For);
        var last = (end < 0 ? line.Tokens.Count : end) - 1;
        var place = Place(line, below);
        const string Headline = "What stands higher is named first";
        if (last < second || line.Index < 2)
        {
            return draft.Error("SR1002", Headline, place, "said with \"above\"", new Suggestion("write \"... is above ...\""));
        }

        var (left, right) = (line.SpanOf(0).Cover(line.SpanOf(line.Index - 2)), line.SpanOf(second).Cover(line.SpanOf(last)));
        return draft.Error("SR1002", Headline, place, "said with \"above\"", draft.Edit("exchange the two names", left.Cover(right), $"{draft.Slice(right)} is above {draft.Slice(left)}", EditSafety.Safe));
    }

    private static bool Stands(FailedLine line, string words)
    {
        var parts = words.Split(' ');
        return line.Index + parts.Length <= line.Tokens.Count && Enumerable.Range(0, parts.Length).All(i => line.Tokens[line.Index + i].Span.EqualsValueIgnoreCase(parts[i]));
    }

    private static SourceSpan Place(FailedLine line, string words) => line.SpanOf(line.Index).Cover(line.SpanOf(line.Index + words.Split(' ').Length - 1));
}
