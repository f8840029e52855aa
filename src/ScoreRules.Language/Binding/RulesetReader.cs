using System.Collections.Immutable;
using ScoreRules.Language.Binding.Building;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Overlays;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>
/// Reads the files of a house. In two steps, because movements may also come from spreadsheets, which need the
/// vocabulary before their names can be used in rules: first <see cref="Read"/>, then <see cref="Bind"/>.
/// </summary>
public sealed class RulesetReader
{
    private readonly IReadOnlyList<StatementSyntax> statements;
    private readonly BindContext context;
    private readonly DateOnly? day;
    private readonly InfoBinder info;
    private readonly TargetBinder targets;

    private RulesetReader(IReadOnlyList<StatementSyntax> read, Surroundings around, DiagnosticBag findings, IEnumerable<DoubtfulText> doubtful)
    {
        day = DateCheck.DayOf(around.Date, read);
        var merged = OverlayMerger.Merge(read, around.Houses, day, findings);
        statements = merged.Statements;
        IsComplete = merged.IsComplete;
        context = new BindContext(findings, Doubtful(doubtful, merged.Ledger)) { Ledger = merged.Ledger, Day = day };
        DateCheck.Amendments(read, context);
        info = new InfoBinder(context);
        targets = new TargetBinder(context, info);
        Attributes = new VocabularyBinder(context, info).Bind(statements);
        Targets = targets.Bind(statements);
    }

    /// <summary>Attributes; an attribute's index is its position.</summary>
    public ImmutableArray<AttributeDefinition> Attributes { get; }

    /// <summary>Targets and sub-targets, as far as they can be known before movements are.</summary>
    public ImmutableArray<TargetDefinition> Targets { get; }

    /// <summary>Whether every house that it builds on was found; otherwise nothing but its head is read.</summary>
    public bool IsComplete { get; }

    /// <summary>All findings so far.</summary>
    public DiagnosticBag Findings => context.Findings;

    /// <summary>Parses files and binds their vocabulary. The order of the files does not matter.</summary>
    /// <param name="files">The files.</param>
    /// <param name="around">What is given with them.</param>
    public static RulesetReader Read(IEnumerable<SourceText> files, Surroundings? around = null) =>
        From(files.OrderBy(file => file.Path, StringComparer.Ordinal).Select(SyntaxParser.Parse), around);

    /// <summary>Binds the vocabulary of files that were parsed before, in the order of their names.</summary>
    internal static RulesetReader From(IEnumerable<FileSyntax> files, Surroundings? around = null)
    {
        var findings = new DiagnosticBag();
        var read = files.ToList();
        findings.AddRange(read.SelectMany(file => file.Findings));
        return new RulesetReader([.. read.SelectMany(file => file.Statements)], around ?? Surroundings.None, findings, read.SelectMany(file => file.Doubtful));
    }

    /// <summary>Binds everything else.</summary>
    /// <param name="fromSpreadsheets">Movements read from spreadsheets.</param>
    public BoundRuleset Bind(IReadOnlyList<MovementDeclaration> fromSpreadsheets)
    {
        var movements = DeclareNames(fromSpreadsheets);
        var tiers = new TierBinder(context, info).Bind(statements);
        var words = new WordBinder(context, info).Bind(statements);
        var (calls, recipes) = new CallBinder(context, info).Bind(statements);
        var rules = new RuleBinder(context, info);
        var acting = statements.Select(rules.Bind).OfType<ConditionalStatement>().ToList();
        var ruleset = new BoundRuleset
        {
            House = new HouseBinder(context, info).Bind(statements),
            Attributes = Attributes,
            Muscles = [.. context.Muscles.Names.Select(name => context.Muscles.TryFind(name)!)],
            Targets = targets.Finish(),
            Tiers = tiers,
            Words = words,
            Criteria = new CriterionBinder(context, info).Bind(statements),
            Weights = new WeightsBinder(context, info).Bind(statements),
            Calls = calls,
            Recipes = recipes,
            Awards = [.. acting.OfType<AwardDefinition>()],
            CancelOuts = [.. acting.OfType<CancelOutDefinition>()],
            Limits = [.. acting.OfType<LimitDefinition>()],
            Exclusions = [.. acting.OfType<ExclusionDefinition>()],
            Cautions = [.. acting.OfType<CautionDefinition>()],
            Refusals = [.. acting.OfType<RefusalDefinition>()],
            Movements = [.. movements.Bind(), .. fromSpreadsheets],
            Places = new PlaceBinder(context, info).Bind(statements),
            Evidence = new EvidenceBinder(context, info).Bind(statements),
            Studies = new StudyBinder(context, info).Bind(statements),
            Expectations = new ExpectationBinder(context, info).Bind(statements),
            Profiles = new ProfileBinder(context, info).Bind(statements),
            Choices = new ChoiceBinder(context, info).Bind(statements),
            Questions = new QuestionBinder(context, info).Bind(statements),
            Philosophy = HouseBinder.Prose(statements),
        };
        OverrideCheck.Report(acting, context.Findings);
        // A ruleset whose first line is lost may have said on which day it was checked.
        if (day is null && !context.Doubts.HasLostHead && statements.All(statement => statement.Spec != HouseGrammar.Ruleset || (statement.IsWhole && !statement.Has(HouseGrammar.Checked))))
        {
            DateCheck.Missing(context);
        }

        return InForce.On(ruleset with { NotYetApplied = context.Later.ToList(), Amendments = context.Ledger.All, Bases = context.Ledger.Bases, Accepted = [.. context.Accepted], NotInForce = [.. context.Absent] }, context.Dated.Count > 0 ? day : null);
    }

    /// <summary>
    /// Warns of names that are never used, one slip apart or used for two things, and of texts that swallowed a line. To be
    /// asked, after <see cref="Bind"/>, only of a house that has no error: a name may be used in what could not be read.
    /// </summary>
    public void CheckNames()
    {
        new SwallowedLines(context).Report(statements);
        UnusedNames.Report(context);
        NearNames.Report(context);
        SameNames.Report(context);
    }

    private static Doubts Doubtful(IEnumerable<DoubtfulText> texts, Ledger ledger)
    {
        var doubts = new Doubts { Dropped = ledger.Dropped };
        foreach (var text in texts)
        {
            doubts.Add(text.Kind, text.Text);
        }

        foreach (var tier in ledger.DoubtfulTiers)
        {
            doubts.Add("tiers", tier);
        }

        return doubts;
    }

    private MovementBinder DeclareNames(IReadOnlyList<MovementDeclaration> fromSpreadsheets)
    {
        var movements = new MovementBinder(context, info);
        movements.DeclareNames(statements);
        foreach (var movement in fromSpreadsheets)
        {
            DeclareFromSpreadsheet(movement);
        }

        foreach (var statement in statements.Where(statement => statement.First is not null))
        {
            DeclareOthers(statement);
        }

        context.KnowsOutcomes = statements.Any(statement => statement.Has(HouseGrammar.Judges))
            && statements.All(statement => statement.IsWhole || !(statement.Spec == HouseGrammar.Ruleset || statement.Spec == EvidenceGrammar.Evidence)) && !Findings.HasErrors;

        return movements;
    }

    private void DeclareFromSpreadsheet(MovementDeclaration movement)
    {
        if (context.Movements.LocationOf(movement.Name) is { } before)
        {
            Findings.Add(new Diagnostic("SR2002", Severity.Error, $"\"{movement.Name}\" is declared twice", new Label(movement.Info.Location, "second time"))
            {
                Others = [new Label(before, "first time")],
                Suggestions = [new Suggestion("keep the movement in one of the two places")],
            });
        }

        foreach (var name in movement.Synonyms.Prepend(movement.Name))
        {
            context.Movements.Add(name, movement.Info.Location, movement.Name);
        }
    }

    private void DeclareOthers(StatementSyntax statement)
    {
        if (statement.Spec == ScoringGrammar.Criterion)
        {
            context.Criteria.Declare(statement.Head<NameSyntax>(), statement, statement.Head<NameSyntax>());
        }
        else if (statement.Spec == RuleGrammar.Call)
        {
            context.CalledFacts.Add(statement.Head<NameSyntax>().Text, statement.HeadLocation, statement.Head<NameSyntax>());
        }
        else if (statement.Spec == HouseGrammar.Ruleset)
        {
            DeclareOutcomes([.. statement.All(HouseGrammar.Judges).Select(line => line.Content)], statement);
        }
        else if (statement.Spec == EvidenceGrammar.Evidence)
        {
            DeclareOutcomes([.. statement.All(EvidenceGrammar.Ignores).SelectMany(line => line.Content)], statement);
        }
        else if (statement.Spec == QuestionGrammar.Profile)
        {
            DeclareProfile(statement.Head<NameSyntax>(), statement);
        }

        if (statement.Find(Uniform.Named) is { } named)
        {
            context.Rules.Declare(named.Content, statement, named.Content);
        }
    }

    private void DeclareProfile(NameSyntax name, StatementSyntax statement)
    {
        if (Validity.Covers(statement, day))
        {
            context.Profiles.Declare(name, statement, name);
        }
        else
        {
            context.Profiles.DeclareAbsent(name, statement, name, day!.Value);
        }
    }

    private void DeclareOutcomes(NameSyntax[] names, StatementSyntax statement)
    {
        foreach (var name in names)
        {
            context.Outcomes.Add(name.Text, statement.At(name.Span), name);
        }
    }
}
