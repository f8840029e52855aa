using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary>Compares the first words of a line with what it could have started with.</summary>
internal static class Words
{
    private const int MostOffered = 3;
    private const int MostWords = 6;

    /// <summary>The words to underline, those words, and the starters nearest to them.</summary>
    public static (SourceSpan Span, string Written, ImmutableArray<string> Near) NearestStarter(SourceText source, SourceSpan line, IReadOnlyCollection<string> starters)
    {
        var best = (Span: FirstWords(source, line, 1), Near: ImmutableArray<string>.Empty);
        for (var count = 4; count >= 1; count--)
        {
            var span = FirstWords(source, line, count);
            var written = source.Slice(span);
            var near = Nearest(written, starters);
            if (!near.IsEmpty)
            {
                best = (span, near);
                break;
            }
        }

        return (best.Span, source.Slice(best.Span), best.Near);
    }

    /// <summary>The starters that a line begins with but for one word, and where it does.</summary>
    public static (string Starter, SourceSpan Place)[] BrokenStarters(SourceText source, SourceSpan line, IReadOnlyCollection<string> starters)
    {
        var words = source.Slice(FirstWords(source, line, MostWords)).Split([' ', '\t'], StringSplitOptions.RemoveEmptyEntries);
        return [.. BrokenPhrase.Find(words, starters).Select(found => (found.Phrase, FirstWords(source, line, found.Written)))];
    }

    private static ImmutableArray<string> Nearest(string written, IReadOnlyCollection<string> starters)
    {
        var near = starters.Where(starter => starter.Split(' ').Length == written.Split(' ').Length)
            .Select(starter => (starter, distance: PhraseDistance.Between(written, starter)))
            .Where(pair => pair.distance != int.MaxValue).OrderBy(pair => pair.distance).ToList();
        return [.. near.TakeWhile(pair => pair.distance == near[0].distance).Select(pair => pair.starter).Distinct(StringComparer.Ordinal).Take(MostOffered)];
    }

    private static SourceSpan FirstWords(SourceText source, SourceSpan line, int count)
    {
        var at = line.Start;
        for (var i = 0; i < count && at < line.End; i++)
        {
            while (i > 0 && at < line.End && char.IsWhiteSpace(source.Text[at]))
            {
                at++;
            }

            while (at < line.End && !char.IsWhiteSpace(source.Text[at]) && at - line.Start < 60)
            {
                at++;
            }
        }

        return SourceSpan.FromBounds(line.Start, at);
    }
}
