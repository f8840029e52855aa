using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary><c>measured A is better than B by 3 points</c>: the number stands before "better than".</summary>
internal static class MeasuredAdvice
{
    public static Diagnostic? Find(AdviceDraft draft, FailedLine line)
    {
        if (line.Spec.Starter is not ("measured" or "found") || line.KindBefore() != TokenKind.Is || !Is(line, line.Index, "better") || !Is(line, line.Index + 1, "than"))
        {
            return null;
        }

        var by = line.Tokens.FindIndex(line.Index, token => token.Span.EqualsValueIgnoreCase("by"));
        var number = by < 0 ? -1 : by + 1;
        var counted = number > 0 && number < line.Tokens.Count && line.Tokens[number].Kind == TokenKind.Number;
        return counted ? Moved(draft, line, by) : line.Spec.Starter == "measured" ? Missing(draft, line) : null;
    }

    private static Diagnostic Missing(AdviceDraft draft, FailedLine line) =>
        draft.Error("SR1001", "Nothing says how much better", line.SpanOf(line.Index) with { Length = 0 }, "a number is missing here",
            new Suggestion("put the number in, such as \"... is 9 points better than ...\"; without a number the line is \"found ... is clearly better than ...\", with a word of the house"));

    // "A is better than B by 3 points for soleus": the amount is put before, what stands behind it stays.
    private static Diagnostic Moved(AdviceDraft draft, FailedLine line, int by)
    {
        var end = line.Tokens.FindIndex(by, token => token.Kind == TokenKind.For);
        var last = (end < 0 ? line.Tokens.Count : end) - 1;
        var amount = SourceSpan.FromBounds(line.SpanOf(by + 1).Start, line.SpanOf(last).End);
        var start = line.Spec.Starter == "measured" ? line.SpanOf(line.Index).Start : line.Line.Content.Start;
        var before = line.Spec.Starter == "measured" ? "" : $"measured {draft.Slice(SourceSpan.FromBounds(line.SpanOf(0).Start, line.SpanOf(line.Index).Start))}";
        var compared = draft.Slice(SourceSpan.FromBounds(line.SpanOf(line.Index).Start, line.SpanOf(by - 1).End));
        var edit = draft.Edit("write it before", SourceSpan.FromBounds(start, amount.End), $"{before}{draft.Slice(amount)} {compared}", before.Length == 0 ? EditSafety.Safe : EditSafety.Shown);
        return draft.Error("SR1002", "The number stands behind \"better than\"", SourceSpan.FromBounds(line.SpanOf(by).Start, amount.End), "belongs before it", edit);
    }

    private static bool Is(FailedLine line, int index, string word) => index < line.Tokens.Count && line.Tokens[index].Span.EqualsValueIgnoreCase(word);
}
