using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds criteria.</summary>
internal sealed class CriterionBinder(BindContext context, InfoBinder info)
{
    private readonly WorthBinder worths = new(context);
    private readonly Numbers numbers = new(context);

    /// <summary>All criteria whose parts could be bound.</summary>
    public ImmutableArray<CriterionDefinition> Bind(IEnumerable<StatementSyntax> statements) =>
        [.. statements.Where(statement => statement.Spec == ScoringGrammar.Criterion && statement.First is not null).Select(BindOne).OfType<CriterionDefinition>()];

    private CriterionDefinition? BindOne(StatementSyntax statement)
    {
        var said = info.Bind(statement, statement.Head<NameSyntax>());
        var readings = statement.All(ScoringGrammar.Reads).Select(line => Reading(line, statement)).ToList();
        var weights = statement.All(ScoringGrammar.Counts).Select(line => Weight(line, statement)).ToList();
        CheckRepeats(statement, readings.OfType<CriterionReading>().Select(reading => (reading.Targets, reading.Location)), "reads");
        CheckRepeats(statement, weights.OfType<CriterionWeight>().Select(weight => (weight.Targets, weight.Location)), "counts");
        if (readings.Contains(null) || readings.Count == 0)
        {
            return null;
        }

        var unknown = statement.Find(ScoringGrammar.UnknownIsWorth)?.Content;
        var worth = worths.Bind(statement, readings[0]!.Attribute, unknown is not null || !statement.IsWhole);
        return worth is null || weights.Contains(null) ? null : new CriterionDefinition(said, [.. weights!], [.. readings!], worth, Share(unknown, statement));
    }

    private double? Share(QuantitySyntax? percent, StatementSyntax statement) => percent is null ? null : worths.Share(percent, statement);

    private CriterionReading? Reading(ClauseSyntax<ReadsSyntax> line, StatementSyntax statement)
    {
        var attribute = context.Attributes.Find(line.Content.Attribute, statement);
        var targets = Targets(line.Content.Targets, statement);
        if (attribute?.Kind == AttributeKind.SomeOf)
        {
            context.Report("SR5009", Severity.Error, $"\"{attribute.Name}\" is a list, and a criterion reads one value", statement, line.Content.Attribute.Span, "", [new Label(attribute.Info.Location, "declared here")], new Suggestion("say it with \"give\" or \"take\" and a condition \"has ...\""));
            return null;
        }

        return attribute is null || targets is null ? null : new CriterionReading(attribute, targets.Value, statement.At(line.Span));
    }

    private CriterionWeight? Weight(ClauseSyntax<WeightSyntax> line, StatementSyntax statement)
    {
        var targets = Targets(line.Content.Targets, statement);
        if (line.Content.Value is not { } value)
        {
            return targets is null ? null : new CriterionWeight(null, targets.Value, statement.At(line.Span));
        }

        if (value.IsUnknown || value.Unit is not (null or "parts") || value.Number <= 0)
        {
            var label = value.IsUnknown ? "unknown" : value.Unit is not (null or "parts") ? "parts are meant" : "not above 0";
            context.Error("SR5003", "A weight is a number of parts above 0", statement, value.Span, label, new Suggestion("write for example \"counts 10 parts\"; parts need not total 100"));
            return null;
        }

        return targets is null || numbers.Uncertain(value, statement) is not { } amount ? null : new CriterionWeight(amount, targets.Value, statement.At(line.Span));
    }

    private ImmutableArray<TargetDefinition>? Targets(ImmutableArray<NameSyntax> names, StatementSyntax statement)
    {
        var found = names.Select(name => context.Targets.Find(name, statement)).ToList();
        return found.Contains(null) ? null : [.. found!];
    }

    private void CheckRepeats(StatementSyntax statement, IEnumerable<(ImmutableArray<TargetDefinition> Targets, Text.SourceLocation Place)> lines, string word)
    {
        var seen = new Dictionary<string, Text.SourceLocation>(StringComparer.Ordinal);
        foreach (var (targets, place) in lines)
        {
            foreach (var name in targets.IsEmpty ? [""] : targets.Select(target => target.Name))
            {
                if (!seen.TryAdd(name, place))
                {
                    var where = name.Length == 0 ? "for every target" : $"for \"{name}\"";
                    context.Report("SR1008", Severity.Error, $"\"{word}\" is said twice {where}", statement, place, "second time", [new Label(seen[name], "first time")], new Suggestion("keep one of them"));
                }
            }
        }
    }
}
