using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary>A number, a comma or one of the eight words inside a bare name.</summary>
internal static class NameAdvice
{
    // Where a name is made up, quotes make it one; where it is looked up, it may only seem to be one.
    private static readonly string[] Declaring =
    [
        "movement", "criterion", "target", "muscle", "attribute", "call", "work out", "study", "profile", "ruleset", "named", "also known as", "unsuitable for",
    ];

    public static Diagnostic? Find(AdviceDraft draft, FailedLine line)
    {
        var kind = line.Token.Kind;
        var before = line.Failure.NameBefore(line.Index);
        var inName = before is not null && (kind == TokenKind.Number || kind == TokenKind.Comma || ReservedWords.IsReserved(kind));
        var reservedFirst = ReservedWords.IsReserved(kind) && line.Expected.Any(expected => expected.Words == "a name");
        if (line.AtEnd || !(inName || reservedFirst))
        {
            return null;
        }

        var what = kind switch
        {
            TokenKind.Number => "A number",
            TokenKind.Comma => "A comma",
            _ => $"The word \"{line.Token.ToStringValue()}\"",
        };
        var first = before ?? line.Index;
        var last = LastOfName(line);
        var name = draft.Slice(SourceSpan.FromBounds(line.SpanOf(first).Start, line.SpanOf(last).End));
        var safety = first == 0 && Declaring.Contains(line.Spec.Starter, StringComparer.Ordinal) && kind != TokenKind.Not && last == line.Tokens.Count - 1 && !name.Contains('"', StringComparison.Ordinal) ? EditSafety.Safe : EditSafety.Shown;
        return draft.Error("SR1013", $"{what} cannot stand inside a bare name", line.SpanOf(line.Index), inName ? "the name seems to end before this" : "",
            draft.Edit(kind == TokenKind.Not ? "choose a name without \"not\" and ask for its opposite with \"unless\", or put the whole name in double quotes" : "if it belongs to the name, put the whole name in double quotes", line.SpanOf(first).Cover(line.SpanOf(last)), $"\"{name.Replace("\"", "", StringComparison.Ordinal)}\"", safety));
    }

    // Where the line goes on with "is" or "has", the name ends before it.
    private static int LastOfName(FailedLine line)
    {
        var verb = line.Wants("is") || line.Wants("has") ? line.Tokens.FindIndex(line.Index, token => token.Kind is TokenKind.Is or TokenKind.Has) : -1;
        return verb > line.Index ? verb - 1 : line.Tokens.Count - 1;
    }
}
