using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary>A forgotten "is": <c>external support at least 3</c>, <c>expect A above B</c>.</summary>
internal static class VerbAdvice
{
    private static readonly string[] Openers =
    [
        "at least", "at most", "more than", "less than", "between", "one of", "none of", "other than", "no higher than", "no lower than", "left out",
        "above", "within", "called", "better than", "about the same as",
    ];

    public static Diagnostic? Find(AdviceDraft draft, FailedLine line)
    {
        if (!line.Wants("is"))
        {
            return null;
        }

        for (var i = Math.Min(line.Index, line.Tokens.Count - 1); i > 0 && i > line.Index - 12; i--)
        {
            if (Array.Find(Openers, words => Opens(line, i, words)) is { } opener)
            {
                var gap = new SourceSpan(line.SpanOf(i).Start, 0);
                return draft.Error("SR1022", $"\"is\" is missing before \"{opener}\"", gap, "here", draft.Edit("put \"is\" in", gap, "is ", EditSafety.Safe));
            }
        }

        return null;
    }

    private static bool Opens(FailedLine line, int index, string opener)
    {
        var words = opener.Split(' ');
        return index + words.Length <= line.Tokens.Count
            && Enumerable.Range(0, words.Length).All(i => line.Tokens[index + i].ToStringValue().Equals(words[i], StringComparison.OrdinalIgnoreCase))
            && line.Tokens.Take(index).All(token => token.Kind != TokenKind.Is || index > line.Index);
    }
}
