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

        var near = line.Expected.Where(expected => expected.Literal && char.IsLetter(expected.Words[0]))
            .Select(expected => Candidate(draft, line, expected.Words))
            .Where(candidate => candidate.Distance != int.MaxValue)
            .OrderBy(candidate => candidate.Distance)
            .ToList();
        return near.Count == 0 ? null : Misspelt(draft, near[0].Place, [.. near.TakeWhile(candidate => candidate.Distance == near[0].Distance).Select(candidate => candidate.Words)]);
    }

    // "bellow the benchmark" is nearer to "below the benchmark" than to "above the benchmark": the nearest wins, not the first.
    private static (string Words, SourceSpan Place, int Distance) Candidate(AdviceDraft draft, FailedLine line, string words)
    {
        var last = Math.Min(line.Index + words.Split(' ').Length, line.Tokens.Count) - 1;
        var place = line.SpanOf(line.Index).Cover(line.SpanOf(last));
        return (words, place, PhraseDistance.Between(NameText.Key(draft.Slice(place)), words));
    }

    private static Diagnostic Misspelt(AdviceDraft draft, SourceSpan place, string[] words)
    {
        var safety = words.Length == 1 ? EditSafety.Safe : EditSafety.Shown;
        return draft.Error("SR1002", $"\"{draft.Slice(place)}\" does not fit here", place, words.Length == 1 ? $"expected \"{words[0]}\"" : "",
            [.. words.Select(word => draft.Edit($"did you mean \"{word}\"?", place, word, safety))]);
    }
}
