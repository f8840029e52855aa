using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Overlays;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding.Building;

/// <summary>All names of a house while it is being bound, and where findings go.</summary>
internal sealed class BindContext(DiagnosticBag findings, Doubts doubts)
{
    /// <summary>Where findings go.</summary>
    public DiagnosticBag Findings { get; } = findings;

    /// <summary>Texts that could not be read and may declare a name.</summary>
    public Doubts Doubts { get; } = doubts;

    /// <summary>Words that were reported as not allowed for an attribute, so that each is reported once.</summary>
    public HashSet<(string Attribute, string Word)> ReportedWords { get; } = [];

    /// <summary>What was read but has no effect yet.</summary>
    public LaterList Later { get; } = new();

    /// <summary>What houses changed and dropped of those below them.</summary>
    public Ledger Ledger { get; init; } = new();

    /// <summary>The day to judge for; null when none is known.</summary>
    public DateOnly? Day { get; init; }

    /// <summary>Statements that bind to nothing because they are not in force on that day.</summary>
    public List<StatementInfo> Absent { get; } = [];

    /// <summary>Where statements say from or until when they are in force.</summary>
    public List<SourceLocation> Dated { get; } = [];

    /// <summary>Warnings that authors accept.</summary>
    public List<AcceptedWarning> Accepted { get; } = [];

    /// <summary>Attributes.</summary>
    public NameTable<AttributeDefinition> Attributes { get; } = new("attribute", "something a movement can be described by", "SR2003", findings, doubts);

    /// <summary>Muscles.</summary>
    public NameTable<MuscleDefinition> Muscles { get; } = new("muscle", "a muscle", "SR2005", findings, doubts);

    /// <summary>Targets.</summary>
    public NameTable<TargetDefinition> Targets { get; } = new("target", "a target", "SR2005", findings, doubts);

    /// <summary>Tiers.</summary>
    public NameTable<TierDefinition> Tiers { get; } = new("tiers", "a tier", "SR2006", findings, doubts);

    /// <summary>Words of the house.</summary>
    public NameTable<SayDefinition> Words { get; } = new("say", "a word this house has defined with \"say\"", "SR2012", findings, doubts);

    /// <summary>Criteria, by name only.</summary>
    public NameTable<NameSyntax> Criteria { get; } = new("criterion", "a criterion", "SR2008", findings, doubts);

    /// <summary>Called facts, by name only.</summary>
    public NameTable<NameSyntax> CalledFacts { get; } = new("call", "a called fact", "SR2001", findings, doubts);

    /// <summary>Movements, by declared name; synonyms lead to it.</summary>
    public NameTable<string> Movements { get; } = new("movement", "a movement", "SR2004", findings, doubts);

    /// <summary>Statements that were given a name.</summary>
    public NameTable<NameSyntax> Rules { get; } = new("rule", "the name of a rule", "SR2008", findings, doubts);

    /// <summary>Profiles, by name only.</summary>
    public NameTable<NameSyntax> Profiles { get; } = new("profile", "a profile", "SR2009", findings, doubts);

    /// <summary>Outcomes that this house judges or ignores, by name only.</summary>
    public NameTable<NameSyntax> Outcomes { get; } = new("ruleset", "an outcome that this house judges or ignores", "SR6005", findings, doubts);

    /// <summary>Whether all outcomes are known: the house says what it judges, and nothing of it was lost.</summary>
    public bool KnowsOutcomes { get; set; }

    /// <summary>The attribute that describes the person who asks, or null.</summary>
    public AttributeDefinition? Person => Attributes.Names.Select(name => Attributes.TryFind(name)!).FirstOrDefault(attribute => attribute.IsAboutThePerson);

    /// <summary>Whether a name is declared, as whatever kind of thing.</summary>
    public bool Knows(NameSyntax name) =>
        Attributes.LocationOf(name.Text) is not null || Muscles.LocationOf(name.Text) is not null || Targets.LocationOf(name.Text) is not null
        || Tiers.LocationOf(name.Text) is not null || Words.LocationOf(name.Text) is not null || Criteria.LocationOf(name.Text) is not null
        || CalledFacts.LocationOf(name.Text) is not null || Movements.LocationOf(name.Text) is not null || Rules.LocationOf(name.Text) is not null
        || Profiles.LocationOf(name.Text) is not null;

    /// <summary>What messages call a statement.</summary>
    public static string TitleOf(StatementSyntax statement) => statement.First switch
    {
        ClauseSyntax<NameSyntax> { Content: { } name } => $"{statement.Spec.Words} \"{name.Text}\"",
        ClauseSyntax<LiftSyntax> { Content: { } lift } => $"{statement.Spec.Words} \"{lift.Movement.Text}\"",
        ClauseSyntax<SaySyntax> { Content: { } say } => $"{statement.Spec.Words} \"{say.Word.Text}\"",
        _ => statement.Find(Syntax.Grammar.Uniform.Named) is { } named ? $"{statement.Spec.Words} \"{named.Content.Text}\"" : statement.Spec.Words,
    };

    /// <summary>Reports an error in a statement.</summary>
    public void Error(string code, string headline, StatementSyntax statement, SourceSpan place, string label, params Suggestion[] suggestions) =>
        Report(code, Severity.Error, headline, statement, place, label, [], suggestions);

    /// <summary>Reports a finding with the place of its other half.</summary>
    public void Report(string code, Severity severity, string headline, StatementSyntax statement, SourceSpan place, string label, Label[] others, params Suggestion[] suggestions) =>
        Report(code, severity, headline, statement, statement.At(place), label, others, suggestions);

    /// <summary>The same at a place of its own: of a changed statement, what was bound may come from another file.</summary>
    public void Report(string code, Severity severity, string headline, StatementSyntax statement, SourceLocation place, string label, Label[] others, params Suggestion[] suggestions) =>
        Findings.Add(new Diagnostic(code, severity, headline, new Label(place, label))
        {
            Within = TitleOf(statement),
            Section = statement.Section,
            Others = [.. others],
            Suggestions = [.. suggestions],
        });
}
