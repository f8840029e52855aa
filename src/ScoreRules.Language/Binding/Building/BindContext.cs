using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding.Building;

/// <summary>All names of a house while it is being bound, and where findings go.</summary>
internal sealed class BindContext(DiagnosticBag findings)
{
    /// <summary>Where findings go.</summary>
    public DiagnosticBag Findings { get; } = findings;

    /// <summary>What was read but has no effect yet.</summary>
    public LaterList Later { get; } = new();

    /// <summary>Attributes.</summary>
    public NameTable<AttributeDefinition> Attributes { get; } = new("something a movement can be described by", "SR2003", findings);

    /// <summary>Muscles.</summary>
    public NameTable<MuscleDefinition> Muscles { get; } = new("a muscle", "SR2005", findings);

    /// <summary>Targets.</summary>
    public NameTable<TargetDefinition> Targets { get; } = new("a target", "SR2005", findings);

    /// <summary>Tiers.</summary>
    public NameTable<TierDefinition> Tiers { get; } = new("a tier", "SR2006", findings);

    /// <summary>Words of the house.</summary>
    public NameTable<SayDefinition> Words { get; } = new("a word this house has defined with \"say\"", "SR2012", findings);

    /// <summary>Criteria, by name only.</summary>
    public NameTable<NameSyntax> Criteria { get; } = new("a criterion", "SR2008", findings);

    /// <summary>Called facts, by name only.</summary>
    public NameTable<NameSyntax> CalledFacts { get; } = new("a called fact", "SR2001", findings);

    /// <summary>Movements, by declared name; synonyms lead to it.</summary>
    public NameTable<string> Movements { get; } = new("a movement", "SR2004", findings);

    /// <summary>Statements that were given a name.</summary>
    public NameTable<NameSyntax> Rules { get; } = new("the name of a rule", "SR2008", findings);

    /// <summary>Profiles, by name only.</summary>
    public NameTable<NameSyntax> Profiles { get; } = new("a profile", "SR2009", findings);

    /// <summary>What messages call a statement.</summary>
    public static string TitleOf(StatementSyntax statement) => statement.First switch
    {
        ClauseSyntax<NameSyntax> { Content: { } name } => $"{statement.Spec.Words} \"{name.Text}\"",
        _ => statement.Spec.Words,
    };

    /// <summary>A name as it must be written: in quotes where it holds something that a bare name cannot.</summary>
    public static string Quote(string name)
    {
        var bare = name.Split(' ').All(word => word.Length > 0 && char.IsLetter(word[0]) && ReservedWords.KindOf(word) == TokenKind.Word
            && word.All(c => char.IsLetterOrDigit(c) || c is '-' or '/' or '.' or '\'' or '’'));
        return bare ? name : $"\"{name}\"";
    }

    /// <summary>Reports an error in a statement.</summary>
    public void Error(string code, string headline, StatementSyntax statement, SourceSpan place, string label, params Suggestion[] suggestions) =>
        Report(code, Severity.Error, headline, statement, place, label, [], suggestions);

    /// <summary>Reports a finding with the place of its other half.</summary>
    public void Report(string code, Severity severity, string headline, StatementSyntax statement, SourceSpan place, string label, Label[] others, params Suggestion[] suggestions) =>
        Findings.Add(new Diagnostic(code, severity, headline, new Label(statement.At(place), label))
        {
            Within = TitleOf(statement),
            Section = statement.Section,
            Others = [.. others],
            Suggestions = [.. suggestions],
        });
}
