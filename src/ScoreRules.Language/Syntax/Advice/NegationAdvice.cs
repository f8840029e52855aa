using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary><c>is not pronated</c>, <c>when not long-loaded</c>: the language says it the other way round.</summary>
internal static class NegationAdvice
{
    private static readonly (string Written, string Opposite)[] AfterIsNot =
    [
        ("one of", "none of"), ("none of", "one of"), ("at least", "less than"), ("at most", "more than"), ("more than", "at most"), ("less than", "at least"),
        ("known", "unknown"), ("unknown", "known"),
    ];

    public static Diagnostic? Find(AdviceDraft draft, FailedLine line)
    {
        if (line.Token.Kind != TokenKind.Not)
        {
            return null;
        }

        var place = line.SpanOf(line.Index);
        return line.Spec.Starter == "expect" ? InExpectation(draft, line, place)
            : line.KindBefore() == TokenKind.Is ? AfterIs(draft, line, place)
            : line.KindBefore() == TokenKind.Has ? AfterHas(draft, line, place)
            : line.IsCondition ? BeforeName(draft, line, place)
            : null;
    }

    private static Diagnostic AfterIs(AdviceDraft draft, FailedLine line, SourceSpan place)
    {
        if (!line.IsCondition)
        {
            return draft.Error("SR1011", "A movement is described by what it is", place, "says what it is not", new Suggestion("name the value it has, or write \"is unknown\""));
        }

        if (line.Follows("between"))
        {
            return draft.Error("SR1011", "What lies outside two numbers is said on two lines", place, "", new Suggestion("write \"when ... is less than ...\" and below it \"or when ... is more than ...\""));
        }

        var (written, opposite) = Array.Find(AfterIsNot, pair => line.Follows(pair.Written));
        return written is null
            ? Opposite(draft, "is", place, place, "other than")
            : Opposite(draft, "is", place, line.Through(written), opposite);
    }

    private static Diagnostic AfterHas(AdviceDraft draft, FailedLine line, SourceSpan place)
    {
        if (!line.IsCondition)
        {
            return draft.Error("SR1011", "A list names what is there", place, "says what is missing", new Suggestion("take this out: what a list does not name is not there; write \"has nothing\" when nothing is"));
        }

        return line.Follows("all of")
            ? draft.Error("SR1011", "\"not\" is not used here: a condition that must fail has a line \"unless\"", place, "", new Suggestion("write a line \"unless ... has all of ...\""))
            : line.Follows("none of") ? Opposite(draft, "has", place, line.Through("none of"), "any of")
            : Opposite(draft, "has", place, line.Follows("any of") ? line.Through("any of") : place, "none of");
    }

    private static Diagnostic Opposite(AdviceDraft draft, string verb, SourceSpan place, SourceSpan replaced, string words) =>
        draft.Error("SR1011", $"Say it the other way round: \"{verb} {words}\"", place, "", draft.Edit($"write \"{words}\"", replaced, words, EditSafety.Safe));

    private static Diagnostic InExpectation(AdviceDraft draft, FailedLine line, SourceSpan place) =>
        line.Follows("called")
            ? Opposite(draft, "is", place, line.Through("called"), "other than")
            : draft.Error("SR1011", "An expectation says what must be so", place, "says what must not", new Suggestion("exchange the two names, or write \"is no higher than\" or \"is no lower than\" and a tier"));

    private static Diagnostic BeforeName(AdviceDraft draft, FailedLine line, SourceSpan place)
    {
        var joined = line.Tokens.Exists(token => token.Kind is TokenKind.And or TokenKind.Or) || line.Tokens.FindAll(token => token.Kind == TokenKind.Not).Count > 1;
        if (line.Index == 0 && !joined && line.Spec.Starter is "when" or "unless")
        {
            var opposite = line.Spec.Starter == "when" ? "unless" : "when";
            var span = SourceSpan.FromBounds(line.Line.Content.Start, place.End);
            var alone = opposite == "unless" && !draft.NextLineStarts("and", "or");
            return draft.Error("SR1011", $"Say it the other way round: \"{opposite}\"", place, "", draft.Edit($"write \"{opposite}\"", span, opposite, alone ? EditSafety.Safe : EditSafety.Shown));
        }

        const string Headline = "\"not\" is not used here: a condition that must fail has a line \"unless\"";
        return line.KindBefore() == TokenKind.And && !line.Tokens.Skip(line.Index).Any(token => token.Kind is TokenKind.And or TokenKind.Or)
            ? draft.Error("SR1011", Headline, place, "", draft.Edit("write it on a line of its own", SourceSpan.FromBounds(line.SpanOf(line.Index - 2).End, place.End), "\n  unless", EditSafety.Shown))
            : draft.Error("SR1011", Headline, place, "", new Suggestion("take it out of this line and write a line of its own: \"unless ...\""));
    }
}
