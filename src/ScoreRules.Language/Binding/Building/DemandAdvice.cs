using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Advice;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding.Building;

/// <summary>
/// Demands that were read as the name of a called fact because their "is" or "has" was forgotten or said with another word:
/// <c>grip pronated</c>, <c>may fail first doesn't have grip</c>, <c>long-loaded unless quick</c>.
/// </summary>
internal sealed class DemandAdvice(BindContext context)
{
    private static readonly string[] Denials = ["doesn't have", "does not have", "lacks", "without", "has no", "isn't", "isnt", "doesnt have", "never"];
    private static readonly string[] Starters = ["unless", "when", "except", "because"];

    /// <summary>Reports what was meant; false when the name holds no attribute and no clause word.</summary>
    public bool Report(NameSyntax name, StatementSyntax statement)
    {
        if (context.CalledFacts.TryFind(name.Text) is not null)
        {
            return false;
        }

        return ReportStarter(name, statement) || ReportAttribute(name, statement);
    }

    /// <summary>What an unknown called fact is instead: an attribute without its value, or a value without its attribute (<c>grip is pronated or neutral</c>).</summary>
    public string? Note(NameSyntax name)
    {
        if (context.Attributes.TryFind(name.Text) is { } attribute)
        {
            return $"\"{attribute.Name}\" describes a movement: say what it must be, such as \"{attribute.Name} {(attribute.Kind == AttributeKind.SomeOf ? "has any of ..." : "is ...")}\"";
        }

        var owner = context.Attributes.Names.Select(known => context.Attributes.TryFind(known)!).FirstOrDefault(known => known.CodeOf(name.Text) >= 0);
        return owner is null ? null : $"\"{name.Text}\" is a word for \"{owner.Name}\": say it whole, such as \"{owner.Name} {(owner.Kind == AttributeKind.SomeOf ? "has" : "is")} {NameQuotes.Of(name.Text)}\"";
    }

    private bool ReportStarter(NameSyntax name, StatementSyntax statement)
    {
        var words = name.Text.Split(' ');
        var index = Array.FindIndex(words, 1, word => Starters.Contains(word, StringComparer.OrdinalIgnoreCase));
        if (index < 0)
        {
            return false;
        }

        var place = PlaceOf(name, words, index, 1, statement);
        var gap = SourceSpan.FromBounds(PlaceOf(name, words, 0, index, statement).End, place.Start);
        context.Error("SR1014", $"\"{words[index]}\" has a line of its own", statement, place, "starts a new line", new Suggestion("start a new line here", new TextEdit(statement.At(gap), "\n  "), EditSafety.Safe));
        return true;
    }

    private bool ReportAttribute(NameSyntax name, StatementSyntax statement)
    {
        var words = name.Text.Split(' ');
        for (var count = words.Length - 1; count > 0; count--)
        {
            if (context.Attributes.TryFind(string.Join(' ', words.Take(count))) is { } attribute)
            {
                ReportVerb(name, words, count, attribute, statement);
                return true;
            }
        }

        return false;
    }

    private void ReportVerb(NameSyntax name, string[] words, int count, AttributeDefinition attribute, StatementSyntax statement)
    {
        var rest = string.Join(' ', words.Skip(count));
        var isList = attribute.Kind == AttributeKind.SomeOf;
        if (Array.Find(Denials, denial => rest.StartsWith(denial + " ", StringComparison.OrdinalIgnoreCase)) is { } denial)
        {
            var denied = PlaceOf(name, words, count, denial.Split(' ').Length, statement);
            var opposite = isList ? "has none of" : "is other than";
            context.Error("SR1011", $"Say it the other way round: \"{opposite}\"", statement, denied, "", new Suggestion($"write \"{opposite}\"", new TextEdit(statement.At(denied), opposite), EditSafety.Safe));
            return;
        }

        var verb = isList ? "has" : "is";
        if (count + 1 < words.Length && VerbSlip.Meant(words[count], afterName: true) is not null)
        {
            var slip = PlaceOf(name, words, count, 1, statement);
            context.Error("SR1002", $"\"{words[count]}\" does not fit here", statement, slip, $"expected \"{verb}\"", new Suggestion($"did you mean \"{verb}\"?", new TextEdit(statement.At(slip), verb), EditSafety.Safe));
            return;
        }

        var gap = new SourceSpan(PlaceOf(name, words, count, 1, statement).Start, 0);
        context.Error("SR1022", $"\"{verb}\" is missing after \"{attribute.Name}\"", statement, gap, "here", new Suggestion($"put \"{verb}\" in", new TextEdit(statement.At(gap), verb + " "), EditSafety.Safe));
    }

    // Words of a bare name stand in the text with any number of blanks between them.
    private static SourceSpan PlaceOf(NameSyntax name, string[] words, int first, int count, StatementSyntax statement)
    {
        var text = statement.Source.Text;
        var at = name.Span.Start;
        var start = at;
        for (var i = 0; i < first + count && i < words.Length; i++)
        {
            at = text.IndexOf(words[i], at, StringComparison.Ordinal);
            start = i == first ? at : start;
            at += words[i].Length;
        }

        return SourceSpan.FromBounds(start, at);
    }
}
