using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary><c>expect "A is above B"</c>: quotes round more than a name.</summary>
internal static class QuoteAdvice
{
    public static Diagnostic? Find(AdviceDraft draft, FailedLine line)
    {
        if (!line.AtEnd || line.Tokens.Count != 1 || line.Tokens[0].Kind != TokenKind.Quoted)
        {
            return null;
        }

        var place = line.SpanOf(0);
        var inside = draft.Slice(place)[1..^1];
        return draft.Error("SR1023", "The quotes make all of this one name", place, "one name", draft.Edit("put quotes round the name alone, or leave them out", place, inside, EditSafety.Shown));
    }
}
