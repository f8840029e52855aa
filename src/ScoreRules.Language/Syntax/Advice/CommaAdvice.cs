using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary>A comma forgotten between two things of a list.</summary>
internal static class CommaAdvice
{
    public static Diagnostic? Find(AdviceDraft draft, FailedLine line)
    {
        if (line.AtEnd || !line.Wants(",") || line.KindBefore() == TokenKind.Comma)
        {
            return null;
        }

        return line.Token.Kind switch
        {
            TokenKind.Word or TokenKind.Quoted or TokenKind.Number => Before(draft, line, line.Index, EditSafety.Safe),
            TokenKind.Is or TokenKind.Has => BetweenFacts(draft, line),
            _ => null,
        };
    }

    private static Diagnostic Before(AdviceDraft draft, FailedLine line, int index, EditSafety safety)
    {
        var gap = new SourceSpan(line.SpanOf(index - 1).End, 0);
        return draft.Error("SR1009", $"A comma is missing before \"{draft.Slice(line.SpanOf(index))}\"", gap, "here", draft.Edit("put a comma in", gap, ",", safety));
    }

    // "grip is pronated stretch is 3": the second fact's name was read as part of the first one's value.
    private static Diagnostic BetweenFacts(AdviceDraft draft, FailedLine line)
    {
        var start = line.Failure.NameBefore(line.Index) ?? line.Index - 1;
        var words = line.Index - start;
        if (words == 2)
        {
            return Before(draft, line, line.Index - 1, EditSafety.Safe);
        }

        var place = line.SpanOf(start).Cover(line.SpanOf(line.Index));
        return draft.Error("SR1009", "A comma is missing between two facts", place, "in here", new Suggestion("put a comma before the name of the second fact, or start a new line with it"));
    }
}
