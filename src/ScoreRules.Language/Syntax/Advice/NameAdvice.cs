using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary>A number, a comma or one of the eight words inside a bare name.</summary>
internal static class NameAdvice
{
    public static Diagnostic? Find(AdviceDraft draft, FailedLine line)
    {
        var kind = line.Token.Kind;
        var inName = line.KindBefore() == TokenKind.Word && (kind == TokenKind.Number || kind == TokenKind.Comma || ReservedWords.IsReserved(kind));
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
        var first = line.Index;
        while (first > 0 && line.Tokens[first - 1].Kind == TokenKind.Word)
        {
            first--;
        }

        var name = line.SpanOf(first).Cover(line.SpanOf(line.Tokens.Count - 1));
        var safety = first == 0 && !draft.Slice(name).Contains('"', StringComparison.Ordinal) ? EditSafety.Safe : EditSafety.Shown;
        return draft.Error("SR1013", $"{what} cannot stand inside a bare name", line.SpanOf(line.Index), "the name seems to end before this",
            draft.Edit("if it belongs to the name, put the whole name in double quotes", name, $"\"{draft.Slice(name).Replace("\"", "", StringComparison.Ordinal)}\"", safety));
    }
}
