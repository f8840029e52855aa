using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary><c>give 4 points when complete stimulus</c>: a condition, a reason or a limit has its own line.</summary>
internal static class ConditionAdvice
{
    private static readonly string[][] Starters = [["when"], ["unless"], ["only", "for"], ["except", "for"], ["named"], ["overrides"], ["always"]];

    public static Diagnostic? Find(AdviceDraft draft, FailedLine line)
    {
        if (line.AtEnd || line.Index == 0)
        {
            return null;
        }

        var words = line.Token.Kind == TokenKind.Because ? "because" : Array.Find(Starters, starter => Stands(line, starter)) is { } found ? string.Join(' ', found) : null;
        if (words is null || (line.IsCondition && words == "when"))
        {
            return line.Token.Kind == TokenKind.For && !line.IsCondition && line.Failure.NameBefore(line.Index) is null ? For(draft, line) : null;
        }

        var place = line.SpanOf(line.Index);
        var gap = SourceSpan.FromBounds(line.SpanOf(line.Index - 1).End, place.Start);
        return draft.Error("SR1014", $"\"{words}\" has a line of its own", place, "starts a new line", draft.Edit("start a new line here", gap, "\n  ", EditSafety.Safe));
    }

    private static bool Stands(FailedLine line, string[] words) =>
        line.Index + words.Length <= line.Tokens.Count && Enumerable.Range(0, words.Length).All(i => line.Tokens[line.Index + i].Span.EqualsValueIgnoreCase(words[i]));

    private static Diagnostic For(AdviceDraft draft, FailedLine line) =>
        draft.Error("SR1014", "What this holds for has a line of its own", line.SpanOf(line.Index), "starts a new line", new Suggestion("write \"only for ...\" with targets or movements on the next line, or \"because ...\" if it is a reason"));
}
