using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary>A word that is nearly one of those that would have fitted.</summary>
internal static class MisspeltAdvice
{
    public static Diagnostic? Find(AdviceDraft draft, FailedLine line)
    {
        if (line.AtEnd || line.Token.Kind is TokenKind.Number or TokenKind.Comma)
        {
            return null;
        }

        var literals = line.Expected.Where(expected => expected.Literal && char.IsLetter(expected.Words[0])).Select(expected => expected.Words).ToList();
        foreach (var words in literals)
        {
            var count = words.Split(' ').Length;
            var last = Math.Min(line.Index + count, line.Tokens.Count) - 1;
            var place = line.SpanOf(line.Index).Cover(line.SpanOf(last));
            if (NameSuggester.Nearest(draft.Slice(place), [words]).Length > 0)
            {
                return Misspelt(draft, place, words);
            }
        }

        return null;
    }

    private static Diagnostic Misspelt(AdviceDraft draft, SourceSpan place, string words) =>
        draft.Error("SR1002", $"\"{draft.Slice(place)}\" does not fit here", place, $"expected \"{words}\"", draft.Edit($"did you mean \"{words}\"?", place, words, EditSafety.Safe));
}
