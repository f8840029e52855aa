using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds studies.</summary>
internal sealed class StudyBinder(BindContext context, InfoBinder info)
{
    private readonly StudyCheck check = new(context);
    private readonly StudyAmounts amounts = new(context);

    /// <summary>All studies whose names could be resolved.</summary>
    public ImmutableArray<StudyDefinition> Bind(IEnumerable<StatementSyntax> statements) =>
        [.. statements.Where(statement => statement.Spec == EvidenceGrammar.Study && statement.First is not null).Select(BindOne).OfType<StudyDefinition>()];

    private StudyDefinition? BindOne(StatementSyntax statement)
    {
        check.Check(statement);
        var said = info.Bind(statement, statement.Head<NameSyntax>());
        if (statement.Find(EvidenceGrammar.Compares)?.Content is not { } compared || statement.Find(EvidenceGrammar.Outcome)?.Content.Text is not { } outcome)
        {
            return null;
        }

        var level = compared.Level switch { "classes of" => StudyLevel.Classes, "amounts of" => StudyLevel.Amounts, _ => StudyLevel.Movements };
        var attribute = level == StudyLevel.Classes ? context.Attributes.TryFind(compared.Of!.Text) : null;
        var criterion = level == StudyLevel.Amounts ? context.Criteria.TryFind(compared.Of!.Text)?.Text : null;
        var strength = statement.Has(EvidenceGrammar.LetItDecide) ? StudyStrength.Decide : statement.Has(EvidenceGrammar.WeighIt) ? StudyStrength.Weigh : StudyStrength.Show;
        var findings = Findings(statement, level, attribute, strength);
        if (findings is not { IsEmpty: false } found || (level == StudyLevel.Classes && attribute is null) || (level == StudyLevel.Amounts && criterion is null))
        {
            return null;
        }

        return WithCircumstances(new StudyDefinition(said, level, found, outcome, strength) { Attribute = attribute, Criterion = criterion }, statement);
    }

    private StudyDefinition WithCircumstances(StudyDefinition study, StatementSyntax statement)
    {
        var (people, trust, withdrawn) = (statement.Find(EvidenceGrammar.People), statement.Find(EvidenceGrammar.Trust), statement.Find(EvidenceGrammar.Withdrawn));
        CheckCounts(statement);
        return study with
        {
            Design = DesignOf(statement.Find(EvidenceGrammar.Design)?.Content),
            People = people?.Content.Count.Number,
            Who = people?.Content.Who.Text,
            Weeks = statement.Find(EvidenceGrammar.Lasted)?.Content.Number,
            Trust = trust is null ? 1 : Math.Clamp(trust.Content.Share.Number / 100, 0, 1),
            TrustBecause = trust?.Content.Because?.Text,
            Withdrawn = withdrawn is null ? null : Syntax.CalendarDay.Read(withdrawn.Content.Date),
            WithdrawnBecause = withdrawn?.Content.Because?.Text,
        };
    }

    private static StudyDesign DesignOf(string? words) => words switch
    {
        "within person" => StudyDesign.WithinPerson,
        "between groups" => StudyDesign.BetweenGroups,
        "observed" => StudyDesign.Observed,
        "pooled" => StudyDesign.Pooled,
        _ => StudyDesign.NotSaid,
    };

    private void CheckCounts(StatementSyntax statement)
    {
        if (statement.Find(EvidenceGrammar.People)?.Content.Count is { } count && (count.Number < 1 || count.Number != Math.Floor(count.Number)))
        {
            context.Error("SR3002", "How many people took part is a whole number, 1 or more", statement, count.Span, "", new Suggestion("write for example \"people 20 trained adults\""));
        }

        if (statement.Find(EvidenceGrammar.Trust)?.Content.Share is { Number: < 0 or > 100 } trust)
        {
            context.Error("SR3002", "Trust lies between 0% and 100%", statement, trust.Span, "outside", new Suggestion("write for example 50%"));
        }

        if (statement.Find(EvidenceGrammar.Lasted)?.Content is { Number: <= 0 } weeks)
        {
            context.Error("SR3002", "A study lasts more than 0 weeks", statement, weeks.Span, "", new Suggestion("write for example \"lasted 8 weeks\""));
        }
    }

    // Null when a name in any line is not known: a study without one of its lines would say something else.
    private ImmutableArray<StudyFinding>? Findings(StatementSyntax statement, StudyLevel level, AttributeDefinition? attribute, StudyStrength strength)
    {
        var lines = statement.All(EvidenceGrammar.Found).Concat(statement.All(EvidenceGrammar.Measured)).OrderBy(line => line.Span.Start);
        var bound = ImmutableArray.CreateBuilder<StudyFinding>();
        foreach (var line in lines)
        {
            if (Side(line.Content.First, level, attribute) is not { } first || Side(line.Content.Second, level, attribute) is not { } second)
            {
                return null;
            }

            var finding = new StudyFinding(first, line.Content.Verdict, second, statement.At(line.Span)) { Regions = Regions(line.Content.Regions) };
            bound.Add(amounts.With(finding, line.Content, strength, statement));
        }

        return bound.ToImmutable();
    }

    private string? Side(NameSyntax name, StudyLevel level, AttributeDefinition? attribute) => level switch
    {
        StudyLevel.Movements => context.Movements.TryFind(name.Text),
        StudyLevel.Classes => attribute?.CodeOf(name.Text) >= 0 ? attribute.Values[attribute.CodeOf(name.Text)] : null,
        _ => name.Key,
    };

    private ImmutableArray<string> Regions(ImmutableArray<NameSyntax> names) =>
    [
        .. names.SelectMany(name => context.Targets.TryFind(name.Text) is { } target ? target.Muscles.Select(part => part.Muscle) : context.Muscles.TryFind(name.Text) is { } muscle ? [muscle.Info.Name!] : [])
            .Distinct(StringComparer.Ordinal),
    ];
}
