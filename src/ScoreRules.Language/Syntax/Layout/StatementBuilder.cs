using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Layout;

/// <summary>Collects the lines of one statement and checks what the table says of them.</summary>
internal sealed class StatementBuilder(HeadSpec spec, SourceText source, DiagnosticBag findings, string? section)
{
    private readonly List<ClauseSyntax> lines = [];
    private readonly HashSet<ClauseSpec> unread = [];
    private ClauseSyntax? first;

    /// <summary>Kind of the statement.</summary>
    public HeadSpec Spec { get; } = spec;

    /// <summary>Section heading above it.</summary>
    public string? Section { get; } = section;

    /// <summary>Whether a line of it could not be read, so that nothing should be said about what is missing.</summary>
    public bool Damaged { get; set; }

    /// <summary>Free text lines.</summary>
    public List<TextSyntax> Prose { get; } = [];

    /// <summary>The first line.</summary>
    public ClauseSyntax? First
    {
        get => first;
        set
        {
            first = value;
            Damaged |= value is null;
        }
    }

    /// <summary>What messages call the statement.</summary>
    public string Title => First switch
    {
        ClauseSyntax<NameSyntax> { Content: not null } named => $"{Spec.Words} \"{named.Content.Text}\"",
        _ => Spec.Words,
    };

    /// <summary>Adds a line; a null clause could not be read and has been reported.</summary>
    public void Add(ClauseSyntax? clause, ClauseSpec kind, LineView line)
    {
        if (clause is null)
        {
            unread.Add(kind);
            Damaged = true;
            return;
        }

        var use = Spec.Lines.FirstOrDefault(candidate => candidate.Spec == kind);
        if (use is { Once: true } && lines.Find(earlier => earlier.Spec == kind) is { } before)
        {
            ReportTwice(clause, before);
            return;
        }

        if (kind.Continues && !FollowsWhatItContinues())
        {
            ReportStray(kind, line);
            Damaged = true;
            return;
        }

        lines.Add(clause);
    }

    /// <summary>The statement, after checking what is missing.</summary>
    public StatementSyntax Build()
    {
        if (!Damaged)
        {
            new MissingLines(this, source, findings, lines).Report();
        }

        var start = First?.Span ?? lines.FirstOrDefault()?.Span ?? default;
        var span = lines.Select(line => line.Span).Concat(Prose.Select(text => text.Span)).Aggregate(start, (all, part) => all.Cover(part));
        return new StatementSyntax(Spec, source, span, First, [.. lines], [.. Prose], Section, !Damaged);
    }

    private bool FollowsWhatItContinues()
    {
        var above = lines.Count == 0 ? null : lines[^1];
        return above is ClauseSyntax<ConditionLineSyntax> && above.Spec != Grammar.Reach.Unless
            || above is ClauseSyntax<StepSyntax> || above is ClauseSyntax<(QuantitySyntax Count, ConditionLineSyntax Line)>
            || unread.Count > 0;
    }

    private void ReportTwice(ClauseSyntax clause, ClauseSyntax before) =>
        findings.Add(new Diagnostic("SR1008", Severity.Error, $"\"{clause.Spec.Starter}\" stands twice in one statement", new Label(source.At(clause.Span), "the second one has no effect"))
        {
            Within = Title,
            Section = Section,
            Others = [new Label(source.At(before.Span), "first one")],
            Suggestions = [new Suggestion("keep one of them")],
        });

    private void ReportStray(ClauseSpec kind, LineView line) =>
        findings.Add(new Diagnostic("SR1020", Severity.Error, $"\"{kind.Starter}\" goes on with a condition, and there is none right above it", new Label(source.At(line.Content), "continues nothing"))
        {
            Within = Title,
            Section = Section,
            Suggestions = [new Suggestion(kind == Grammar.Reach.And ? "start the condition with \"when\"; after an \"unless\" line write another \"unless\" line" : "start the condition with \"when\"")],
        });
}
