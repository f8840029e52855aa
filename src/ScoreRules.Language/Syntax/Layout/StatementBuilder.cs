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
    private string? title;

    /// <summary>Kind of the statement.</summary>
    public HeadSpec Spec { get; } = spec;

    /// <summary>Section heading above it.</summary>
    public string? Section { get; } = section;

    /// <summary>Whether a line of it could not be read, so that nothing should be said about what is missing.</summary>
    public bool Damaged { get; set; }

    /// <summary>Whether its head was set in, as if a word before it were lost: what does not fit below it may fit what was meant.</summary>
    public bool IsDoubtful { get; set; }

    /// <summary>Whether a line of it may have been lost to a statement that is set in below it, so that nothing should be said about what is missing.</summary>
    public bool MayLack { get; set; }

    /// <summary>Free text lines.</summary>
    public List<TextSyntax> Prose { get; } = [];

    /// <summary>Texts of lines that could not be read and may declare a name.</summary>
    public List<DoubtfulText> Doubtful { get; } = [];

    /// <summary>The first line.</summary>
    public ClauseSyntax? First
    {
        get => first;
        set
        {
            first = value;
            title = null;
            Damaged |= value is null;
        }
    }

    /// <summary>What messages call the statement.</summary>
    public string Title => title ??= First switch
    {
        ClauseSyntax<NameSyntax> { Content: not null } named => $"{Spec.Words} \"{named.Content.Text}\"",
        _ => Spec.Words,
    };

    /// <summary>What a sentence calls the statement: its title, or its head in quotes where it has no name.</summary>
    public string Called => Title == Spec.Words ? $"\"{Spec.Words}\"" : Title;

    /// <summary>Keeps the text of a line that could not be read, if such a line declares names.</summary>
    /// <param name="kind">The kind of line; null when its first words are unknown.</param>
    /// <param name="text">What stands behind its first words, or all of it.</param>
    public void Doubt(ClauseSpec? kind, string text)
    {
        if (kind is null || (kind == Spec.FirstLine && Spec.DeclaresName) || kind == Spec.NamedLine || kind == Grammar.Uniform.Named || kind == Grammar.VocabularyGrammar.AlsoKnownAs)
        {
            Doubtful.Add(new DoubtfulText(kind == Grammar.Uniform.Named ? "rule" : Spec.Words, text.Trim()));
        }
    }

    /// <summary>Whether a kind of line stands in it already, read or not.</summary>
    public bool Has(ClauseSpec kind) => unread.Contains(kind) || lines.Exists(line => line.Spec == kind);

    /// <summary>Adds a line; a null clause could not be read and has been reported.</summary>
    public void Add(ClauseSyntax? clause, ClauseSpec kind, LineView line)
    {
        if (clause is null)
        {
            unread.Add(kind);
            Damaged = true;
            return;
        }

        if (Spec.IsOnce(kind) && lines.Find(earlier => earlier.Spec == kind) is { } before)
        {
            ReportTwice(clause, before);
            return;
        }

        if (kind.Continues && !FollowsWhatItContinues())
        {
            ReportStray(kind, line);
            Damaged = true;
            Doubt(null, source.Slice(clause.Span));
            return;
        }

        lines.Add(clause);
    }

    /// <summary>The statement, after checking what is missing.</summary>
    public StatementSyntax Build()
    {
        if (!Damaged && !MayLack && !IsDoubtful)
        {
            new MissingLines(this, source, findings, lines).Report();
        }

        if (First is null && lines.OfType<ClauseSyntax<NameSyntax>>().FirstOrDefault(line => line.Spec == Grammar.Uniform.Named) is { } named)
        {
            Doubtful.Add(new DoubtfulText("rule", named.Content.Text));
        }

        var parts = lines.Select(line => line.Span).Concat(Prose.Select(text => text.Span)).Concat(First is null ? [] : [First.Span]).ToList();
        var span = parts.Count == 0 ? default : parts.Aggregate((all, part) => all.Cover(part));
        return new StatementSyntax(Spec, source, span, First, [.. lines], [.. Prose], Section, !Damaged && !IsDoubtful);
    }

    private bool FollowsWhatItContinues()
    {
        var above = lines.Count == 0 ? null : lines[^1];
        return above is ClauseSyntax<ConditionLineSyntax> && above.Spec != Grammar.Reach.Unless
            || above is ClauseSyntax<StepSyntax> || above is ClauseSyntax<(QuantitySyntax Count, ConditionLineSyntax Line)>
            || Damaged;
    }

    private void ReportTwice(ClauseSyntax clause, ClauseSyntax before)
    {
        var word = source.At(new SourceSpan(clause.Span.Start, clause.Spec.Starter.Length));
        Suggestion[] advice = clause.Spec == Grammar.Reach.When
            ? [new("write \"and\" if both must hold", new TextEdit(word, "and")), new("write \"or when\" if one of them is enough", new TextEdit(word, "or when"))]
            : [new("keep one of them")];
        Add("SR1008", $"\"{clause.Spec.Starter}\" stands twice in one statement", clause.Span, "the second one has no effect", [new Label(source.At(before.Span), "first one")], advice);
    }

    private void ReportStray(ClauseSpec kind, LineView line)
    {
        var word = source.At(line.Content with { Length = kind.Starter.Length });
        var afterUnless = lines.Count > 0 && lines[^1].Spec == Grammar.Reach.Unless;
        var advice = kind.Starter == "when" ? new Suggestion("move it right below the step that it limits")
            : afterUnless ? new Suggestion("write another \"unless\" line", new TextEdit(word, "unless"), EditSafety.Safe)
            : lines.Exists(above => above.Spec == Grammar.Reach.When) ? new Suggestion("move it right below the condition that it continues")
            : new Suggestion("start the condition with \"when\"", new TextEdit(word, "when"), EditSafety.Safe);
        Add("SR1020", $"\"{kind.Starter}\" goes on with what stands right above it, and that is no condition", line.Content, "continues nothing", [], advice);
    }

    private void Add(string code, string headline, SourceSpan place, string label, Label[] others, params Suggestion[] advice) =>
        findings.Add(new Diagnostic(code, Severity.Error, headline, new Label(source.At(place), label))
        {
            Within = Title,
            Section = Section,
            Others = [.. others],
            Suggestions = [.. advice],
        });
}
