using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds how studies and principles are brought together.</summary>
internal sealed class EvidenceBinder(BindContext context, InfoBinder info)
{
    private readonly Numbers numbers = new(context);

    /// <summary>The house's statement; null without one. A second one is reported.</summary>
    public EvidenceDefinition? Bind(IEnumerable<StatementSyntax> statements)
    {
        var all = statements.Where(statement => statement.Spec == EvidenceGrammar.Evidence && statement.First is not null).Select(statement => (statement, Bound: BindOne(statement))).ToList();
        foreach (var (statement, _) in all.Skip(1))
        {
            context.Report("SR6007", Severity.Error, "How studies are weighed is told twice", statement, statement.First!.Span, "second time", [new Label(all[0].Bound.Info.Location, "first time")],
                new Suggestion("keep one of the two; in a house that builds on another write \"change evidence\""));
        }

        return all.Count == 0 ? null : all[0].Bound;
    }

    private EvidenceDefinition BindOne(StatementSyntax statement) => new(info.Bind(statement))
    {
        PrinciplesMayBeOff = Doubt(statement.Find(EvidenceGrammar.PrinciplesMayBeOff), statement),
        LoneStudyAdds = Doubt(statement.Find(EvidenceGrammar.LoneStudyAdds), statement),
        StandardDeviationIsWorth = Worth(statement.Find(EvidenceGrammar.OneStandardDeviationIsWorth), statement),
        Ignores = [.. statement.All(EvidenceGrammar.Ignores).SelectMany(line => line.Content).Select(name => name.Text)],
        SpreadsAt = Share(statement.Find(EvidenceGrammar.Spreads), statement),
        FreezesBenchmarks = statement.Has(EvidenceGrammar.Freezes),
    };

    private double? Doubt(ClauseSyntax<QuantitySyntax>? line, StatementSyntax statement)
    {
        if (line is null)
        {
            return null;
        }

        if (line.Content.Number > 0)
        {
            return line.Content.Number;
        }

        context.Error("SR3010", "A doubt is a number above 0", statement, line.Content.Span, "not above 0", new Suggestion("write how far it may be off, such as 5 points; leave the line out if you cannot say"));
        return null;
    }

    private UncertainNumber? Worth(ClauseSyntax<ValueSyntax>? line, StatementSyntax statement)
    {
        if (line is null || !numbers.HasOneUnit(line.Content, statement))
        {
            return null;
        }

        if (line.Content.IsUnknown || line.Content.Unit != "points" || line.Content.Number <= 0)
        {
            context.Error("SR3003", "What a standard deviation is worth is told in points, more than 0", statement, line.Content.Span, "", new Suggestion("write for example \"18 points give or take 4 points\""));
            return null;
        }

        return numbers.Uncertain(line.Content, statement);
    }

    private double? Share(ClauseSyntax<QuantitySyntax>? line, StatementSyntax statement)
    {
        if (line is null)
        {
            return null;
        }

        if (line.Content.Number is > 0 and <= 100)
        {
            return line.Content.Number / 100;
        }

        context.Error("SR3002", "How alike two movements are lies between 0% and 100%", statement, line.Content.Span, "outside", new Suggestion("write for example 60%; leave the line out if findings are to move tested movements only"));
        return null;
    }
}
