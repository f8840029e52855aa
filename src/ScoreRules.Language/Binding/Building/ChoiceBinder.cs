using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds choices.</summary>
internal sealed class ChoiceBinder(BindContext context, InfoBinder info)
{
    private const int MostMovements = 50;

    private readonly ConditionBinder conditions = new(context);
    private readonly Numbers numbers = new(context);

    /// <summary>All choices whose names could be resolved, in the order of the text.</summary>
    public ImmutableArray<ChoiceDefinition> Bind(IEnumerable<StatementSyntax> statements) =>
        [.. statements.Where(statement => statement.Spec == QuestionGrammar.Choose && statement.First is not null).Select(BindOne).OfType<ChoiceDefinition>()];

    private ChoiceDefinition? BindOne(StatementSyntax statement)
    {
        var (written, names) = statement.Head<(QuantitySyntax Count, NameSyntax[] Targets)>();
        var targets = names.Select(name => context.Targets.Find(name, statement)).OfType<TargetDefinition>().Distinct().OrderBy(target => target.Index).ToImmutableArray();
        var choice = new ChoiceDefinition(info.Bind(statement), Count(written, MostMovements, statement) ?? 0, targets)
        {
            Cover = [.. statement.All(QuestionGrammar.Cover).SelectMany(line => line.Content).Select(fact => context.CalledFacts.Find(fact, statement)).OfType<NameSyntax>().Select(fact => fact.Text)],
            Includes = Includes(statement, written),
            Totals = [.. statement.All(QuestionGrammar.Total).Select(line => Total(line.Content, statement)).OfType<(AttributeDefinition, double)>()],
            MostAlike = statement.Find(QuestionGrammar.NoTwoAlike) is { } alike ? Share(alike.Content, statement) : null,
            MoreThan = [.. statement.All(QuestionGrammar.NoTwoDifferOnlyBy).Select(line => line.Content.Select(name => context.Attributes.Find(name, statement)).OfType<AttributeDefinition>().ToImmutableArray())],
            Profile = statement.Find(QuestionGrammar.UsingProfile) is { } profile ? context.Profiles.Find(profile.Content, statement)?.Text : null,
        };
        return choice.Count == 0 || targets.Length == 0 ? null : choice;
    }

    private int? Count(QuantitySyntax written, int most, StatementSyntax statement)
    {
        if (written.Unit is null && written.Number >= 1 && written.Number <= most && written.Number == Math.Floor(written.Number))
        {
            return (int)written.Number;
        }

        context.Error("SR3010", $"A number of movements is a whole number from 1 to {Numbers.Plain(most)}", statement, written.Span, "", new Suggestion("write how many movements are meant, such as 3"));
        return null;
    }

    private double? Share(QuantitySyntax written, StatementSyntax statement)
    {
        if (written.Number is >= 0 and <= 100)
        {
            return written.Number / 100;
        }

        context.Error("SR3010", "Likeness goes from 0% to 100%", statement, written.Span, "outside of that", new Suggestion("write for example 80%"));
        return null;
    }

    // A sum of ratings may pass the end of their scale.
    private (AttributeDefinition, double)? Total((NameSyntax Attribute, ValueSyntax Limit) line, StatementSyntax statement)
    {
        if (context.Attributes.Find(line.Attribute, statement) is not { } attribute)
        {
            return null;
        }

        var isSum = attribute.Kind == AttributeKind.Rating && line.Limit is { First: { Unit: null, Number: >= 0 }, Spread: null, High: null };
        var most = isSum ? line.Limit.First!.Number : numbers.Exactly(attribute, line.Limit, statement);
        return most is { } limit ? (attribute, limit) : null;
    }

    // "and" goes on with the "include" above it.
    private ImmutableArray<ChoiceInclude> Includes(StatementSyntax statement, QuantitySyntax all)
    {
        var found = new List<(int? Count, List<Condition?> Parts)>();
        foreach (var line in statement.Lines)
        {
            if (line is ClauseSyntax<(QuantitySyntax Count, ConditionLineSyntax Line)> include)
            {
                found.Add((Count(include.Content.Count, Math.Max(1, (int)Math.Min(all.Number, MostMovements)), statement), [conditions.BindLine(include.Content.Line, statement)]));
            }
            else if (line is ClauseSyntax<ConditionLineSyntax> and && found.Count > 0)
            {
                found[^1].Parts.Add(conditions.BindLine(and.Content, statement));
            }
            else if (line is ClauseSyntax<ConditionLineSyntax> stray)
            {
                conditions.BindLine(stray.Content, statement);
                context.Error("SR1020", "\"and\" goes on with an \"include\" above it, and there is none", statement, stray.Span, "nothing to go on with", new Suggestion("write \"include 1 when ...\" above it"));
            }
        }

        return
        [
            .. found.Where(include => include.Count is not null && !include.Parts.Contains(null))
                .Select(include => new ChoiceInclude(include.Count!.Value, include.Parts.Count == 1 ? include.Parts[0]! : new AllOf([.. include.Parts!], include.Parts[0]!.Location))),
        ];
    }
}
