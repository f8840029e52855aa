using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary>Lists take commas: <c>chest and back</c>; and one line is all "and" or all "or".</summary>
internal static class ListAdvice
{
    public static Diagnostic? Find(AdviceDraft draft, FailedLine line)
    {
        if (line.Token.Kind is not (TokenKind.And or TokenKind.Or))
        {
            return null;
        }

        var place = line.SpanOf(line.Index);
        if (line.Wants(line.Token.Kind == TokenKind.And ? "or" : "and"))
        {
            return draft.Error("SR1010", "\"and\" and \"or\" on one line can be read two ways", place, "a second kind of joint", new Suggestion("put one of the two on a line of its own: \"and ...\" for all of it, \"or when ...\" for another way in"));
        }

        if (line.KindBefore() == TokenKind.Comma)
        {
            var word = SourceSpan.FromBounds(line.SpanOf(line.Index - 1).End, place.End);
            return draft.Error("SR1009", "A list uses commas alone", place, "", draft.Edit("take it out", word, "", EditSafety.Safe));
        }

        return line.Wants(",") ? Comma(draft, line, place) : null;
    }

    private static Diagnostic Comma(AdviceDraft draft, FailedLine line, SourceSpan place)
    {
        var before = line.SpanOf(line.Index - 1);
        var joint = new SourceSpan(before.End, place.End - before.End);
        var another = line.IsCondition ? [new Suggestion("if it is a second demand, put it on a line of its own: \"and ...\"")] : Array.Empty<Suggestion>();
        return draft.Error("SR1009", "A list uses commas here", place, "", [draft.Edit("write a comma", joint, ",", line.IsCondition ? EditSafety.Shown : EditSafety.Safe), .. another]);
    }
}
