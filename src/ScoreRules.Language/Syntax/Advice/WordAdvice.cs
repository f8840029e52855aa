namespace ScoreRules.Language.Syntax.Advice;

/// <summary>A word that stands twice, a number written as a word, <c>twice as important as</c>.</summary>
internal static class WordAdvice
{
    public static Diagnostics.Diagnostic? Find(AdviceDraft draft, FailedLine line) => Twice(draft, line) ?? Number(draft, line) ?? Importance(draft, line);

    private static Diagnostics.Diagnostic? Twice(AdviceDraft draft, FailedLine line)
    {
        if (line.AtEnd || line.Index == 0 || line.Token.Kind is TokenKind.Number or TokenKind.Quoted)
        {
            return null;
        }

        var (before, place) = (line.SpanOf(line.Index - 1), line.SpanOf(line.Index));
        var word = draft.Slice(place);
        return word.Equals(draft.Slice(before), StringComparison.OrdinalIgnoreCase)
            ? draft.Error("SR1002", $"\"{word}\" stands here twice", place, "", draft.Edit("take it out", Text.SourceSpan.FromBounds(before.End, place.End), "", Diagnostics.EditSafety.Safe))
            : null;
    }

    private static Diagnostics.Diagnostic? Number(AdviceDraft draft, FailedLine line)
    {
        if (line.AtEnd || !line.Expected.Any(expected => expected.Words == "a number") || NumberWords.Find(line.Token.ToStringValue()) is not { } digits)
        {
            return null;
        }

        var place = line.SpanOf(line.Index);
        return draft.Error("SR1002", "A number is written in digits", place, "", draft.Edit($"write {digits}", place, digits, Diagnostics.EditSafety.Safe));
    }

    private static Diagnostics.Diagnostic? Importance(AdviceDraft draft, FailedLine line)
    {
        var index = line.Wants("more important than") ? line.Tokens.FindIndex(token => token.Span.EqualsValueIgnoreCase("as")) - 1 : -1;
        if (index < 0)
        {
            return null;
        }

        var place = line.SpanOf(index);
        var advice = draft.Slice(place).Equals("twice", StringComparison.OrdinalIgnoreCase)
            ? draft.Edit("write \"2 times\"", place, "2 times", Diagnostics.EditSafety.Safe)
            : new Diagnostics.Suggestion("write \"is 2 times as important as\" with your number, or \"is clearly more important than\" with a word of the house");
        return draft.Error("SR1002", "How much more important is told with a number of times", place, "", advice);
    }
}
