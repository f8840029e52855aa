using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Words to codes of an attribute's closed list.</summary>
internal sealed class Codes(BindContext context)
{
    private readonly HashSet<(string Attribute, string Word)> reported = [];

    /// <summary>The codes of words, rising; null when one is not allowed (which is reported).</summary>
    public ImmutableArray<int>? Of(AttributeDefinition attribute, IEnumerable<NameSyntax> words, StatementSyntax statement)
    {
        var codes = new SortedDictionary<int, NameSyntax>();
        var sound = true;
        foreach (var word in words)
        {
            var code = Of(attribute, word, statement);
            sound &= code is not null;
            if (code is { } known && !codes.TryAdd(known, word))
            {
                context.Report("SR3007", Severity.Error, $"\"{word.Text}\" stands twice in this list", statement, word.Span, "second time", [new Label(statement.At(codes[known].Span), "first time")], new Suggestion("take one of them out"));
                sound = false;
            }
        }

        return sound ? [.. codes.Keys] : null;
    }

    /// <summary>The code of a word, or null when it is not allowed (reported once per word).</summary>
    public int? Of(AttributeDefinition attribute, NameSyntax word, StatementSyntax statement)
    {
        var code = attribute.CodeOf(word.Text);
        if (code >= 0)
        {
            return code;
        }

        if (reported.Add((attribute.Name, word.Key)))
        {
            Report(attribute, word, statement);
        }

        return null;
    }

    private void Report(AttributeDefinition attribute, NameSyntax word, StatementSyntax statement)
    {
        var near = NameSuggester.Nearest(word.Text, attribute.Values);
        var place = statement.At(word.Span);
        var safety = near.Length == 1 ? EditSafety.Safe : EditSafety.Shown;
        context.Report("SR3001", Severity.Error, $"\"{word.Text}\" is not a word for \"{attribute.Name}\"", statement, word.Span, "not in its list",
            [new Label(attribute.Info.Location, Numbers.Listed(attribute))],
            [.. near.Select(name => new Suggestion($"did you mean \"{name}\"?", new TextEdit(place, BindContext.Quote(name)), safety))]);
    }
}
