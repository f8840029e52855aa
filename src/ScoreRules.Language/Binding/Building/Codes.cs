using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Advice;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Words to codes of an attribute's closed list.</summary>
internal sealed class Codes(BindContext context)
{
    /// <summary>The codes of words, rising; null when one is not allowed (which is reported).</summary>
    public ImmutableArray<int>? Of(AttributeDefinition attribute, IReadOnlyList<NameSyntax> words, StatementSyntax statement) =>
        words.Count == 1 ? Of(attribute, words[0], statement) is { } code ? [code] : null : OfList(attribute, words, statement);

    private ImmutableArray<int>? OfList(AttributeDefinition attribute, IReadOnlyList<NameSyntax> words, StatementSyntax statement)
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

        if (context.ReportedWords.Add((attribute.Name, word.Key)) && !ReportDenial(attribute, word, statement))
        {
            Report(attribute, word, statement);
        }

        return null;
    }

    // "equipment has no barbell": the nearest word would be the opposite of what was meant.
    private bool ReportDenial(AttributeDefinition attribute, NameSyntax word, StatementSyntax statement)
    {
        if (!word.Key.StartsWith("no ", StringComparison.Ordinal) || attribute.CodeOf(word.Key[3..]) < 0)
        {
            return false;
        }

        if (statement.Spec == MovementGrammar.Movement)
        {
            context.Error("SR1011", "A list names what is there", statement, word.Span, "says what is missing", new Suggestion("take this out: what a list does not name is not there; write \"has nothing\" when nothing is"));
            return true;
        }

        var no = word.Span with { Length = 2 };
        var opposite = attribute.Kind == AttributeKind.SomeOf ? "none of" : "other than";
        var verb = attribute.Kind == AttributeKind.SomeOf ? "has" : "is";
        context.Error("SR1011", $"Say it the other way round: \"{verb} {opposite}\"", statement, no, "", new Suggestion($"write \"{opposite}\"", new TextEdit(statement.At(no), opposite), EditSafety.Safe));
        return true;
    }

    private void Report(AttributeDefinition attribute, NameSyntax word, StatementSyntax statement)
    {
        if (!ReportOpener(word, statement))
        {
            ReportUnknown(attribute, word, statement);
        }
    }

    // "is other then pronated": the misspelt words were read as the beginning of the value.
    private bool ReportOpener(NameSyntax word, StatementSyntax statement)
    {
        var before = statement.Source.Text[..word.Span.Start].TrimEnd();
        var has = before.EndsWith(" has", StringComparison.OrdinalIgnoreCase);
        var parts = word.Text.Split(' ');
        if (!(has || before.EndsWith(" is", StringComparison.OrdinalIgnoreCase)) || Openers.Meant(parts, has) is not { } found || found.Words == parts.Length)
        {
            return false;
        }

        var place = word.Span with { Length = string.Join(' ', parts.Take(found.Words)).Length };
        context.Error("SR1002", $"\"{statement.Source.Slice(place)}\" does not fit here", statement, place, $"expected \"{found.Opener}\"",
            new Suggestion($"did you mean \"{found.Opener}\"?", new TextEdit(statement.At(place), found.Opener), EditSafety.Safe));
        return true;
    }

    private void ReportUnknown(AttributeDefinition attribute, NameSyntax word, StatementSyntax statement)
    {
        var place = statement.At(word.Span);
        if (InWords(attribute, word.Text) is { } several)
        {
            context.Report("SR3001", Severity.Error, $"\"{word.Text}\" is not a word for \"{attribute.Name}\"", statement, word.Span, "not in its list", [],
                new Suggestion($"a comma is missing: write {several}", new TextEdit(place, several)));
            return;
        }

        var near = NameSuggester.Nearest(word.Text, attribute.Values);
        var safety = near.Length == 1 ? EditSafety.Safe : EditSafety.Shown;
        context.Report("SR3001", Severity.Error, $"\"{word.Text}\" is not a word for \"{attribute.Name}\"", statement, word.Span, "not in its list",
            [new Label(attribute.Info.Location, Numbers.Listed(attribute))],
            [.. near.Select(name => new Suggestion($"did you mean \"{name}\"?", new TextEdit(place, NameQuotes.Of(name)), safety))]);
    }

    // "pronated supinated": two allowed words without a comma.
    private static string? InWords(AttributeDefinition attribute, string written)
    {
        var words = written.Split(' ');
        for (var count = 1; count < words.Length; count++)
        {
            var (left, right) = (string.Join(' ', words.Take(count)), string.Join(' ', words.Skip(count)));
            if (attribute.CodeOf(left) >= 0 && (attribute.CodeOf(right) >= 0 ? right : InWords(attribute, right)) is { } rest)
            {
                return $"{left}, {rest}";
            }
        }

        return null;
    }
}
