using System.Text.RegularExpressions;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Tests.Documentation;

/// <summary>An example with one word lost, or with another word in its place.</summary>
/// <param name="Told">What was done, for the message of a failing test.</param>
/// <param name="At">Offset of the word in the example.</param>
/// <param name="Text">The example after it.</param>
internal sealed partial record WordMutant(string Told, int At, string Text)
{
    private const string Nonsense = "zzyzx";

    /// <summary>All such mutants of a text: each word lost, made nonsense, and replaced by the first words of another line of its statement.</summary>
    public static IEnumerable<WordMutant> Of(string text)
    {
        var statements = SyntaxParser.Parse(new SourceText("example.rules", text)).Statements;
        foreach (var (word, number) in Words().Matches(text).Select((word, number) => (word, number)))
        {
            var (at, end) = (word.Index, word.Index + word.Length);
            var spec = statements.Last(statement => statement.Span.Start <= at).Spec;
            yield return new WordMutant($"\"{word.Value}\" lost", at, text.Remove(at, word.Length));
            yield return new WordMutant($"\"{word.Value}\" made nonsense", at, $"{text[..at]}{Nonsense}{text[end..]}");
            if (Another(spec, number) is { } other && other != word.Value)
            {
                yield return new WordMutant($"\"{word.Value}\" made \"{other}\"", at, $"{text[..at]}{other}{text[end..]}");
            }
        }
    }

    private static string? Another(HeadSpec spec, int number)
    {
        var starters = spec.Lines.Select(use => use.Spec.Starter).Where(starter => starter.Length > 0).ToList();
        return starters.Count == 0 ? null : starters[number % starters.Count];
    }

    [GeneratedRegex("\"[^\"\n]*\"|[^\\s,\"%°]+|[,%°]", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Words();
}
