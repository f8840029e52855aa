using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds the facts of a movement.</summary>
internal sealed class FactBinder(BindContext context)
{
    private readonly Numbers numbers = new(context);
    private readonly Codes codes = new(context);

    /// <summary>How many facts a movement states.</summary>
    public static int CountOf(StatementSyntax statement) => statement.Lines.OfType<ClauseSyntax<FactSyntax[]>>().Sum(line => line.Content.Length);

    /// <summary>The facts of a movement that could be bound.</summary>
    public IEnumerable<StatedFact> Bind(StatementSyntax statement)
    {
        foreach (var line in statement.Lines.OfType<ClauseSyntax<FactSyntax[]>>())
        {
            var but = line.Spec == MovementGrammar.ButFacts || line.Spec == MovementGrammar.ButGuessedFacts;
            var guess = line.Spec == MovementGrammar.GuessedFacts || line.Spec == MovementGrammar.ButGuessedFacts;
            foreach (var fact in line.Content)
            {
                if (BindOne(fact, but, guess, statement) is { } bound)
                {
                    yield return bound;
                }
            }
        }
    }

    private StatedFact? BindOne(FactSyntax fact, bool but, bool guess, StatementSyntax statement)
    {
        var attribute = context.Attributes.Find(fact.Attribute, statement);
        if (attribute is null || !MayBeStated(attribute, fact, statement) || !VerbFits(attribute, fact, statement))
        {
            return null;
        }

        var targets = Targets(fact, statement);
        var value = fact.Operands.Length == 1 && fact.Operands[0].Value is { } number
            ? Number(attribute, number, guess, statement)
            : Words(attribute, fact, statement);
        return value is null || targets.Length < fact.Targets.Length ? null : new StatedFact(attribute, value, but, guess, statement.At(fact.Span)) { Targets = targets };
    }

    private ImmutableArray<TargetDefinition> Targets(FactSyntax fact, StatementSyntax statement) =>
        fact.Targets.IsEmpty ? [] : [.. fact.Targets.Select(target => context.Targets.Find(target, statement)).OfType<TargetDefinition>()];

    private bool MayBeStated(AttributeDefinition attribute, FactSyntax fact, StatementSyntax statement)
    {
        if (!attribute.IsWorkedOut && !attribute.IsAboutThePerson)
        {
            return true;
        }

        var why = attribute.IsWorkedOut ? "is worked out, so a movement cannot state it" : "is about the person, so a movement cannot state it";
        context.Report("SR7007", Severity.Error, $"\"{attribute.Name}\" {why}", statement, fact.Attribute.Span, "", [new Label(attribute.Info.Location, "declared here")], new Suggestion("take this fact out"));
        return false;
    }

    private bool VerbFits(AttributeDefinition attribute, FactSyntax fact, StatementSyntax statement)
    {
        if (fact.IsList == (attribute.Kind == AttributeKind.SomeOf))
        {
            return true;
        }

        var headline = fact.IsList ? $"\"{attribute.Name}\" has one value, so it is stated with \"is\"" : $"\"{attribute.Name}\" is a list, so it is stated with \"has\"";
        context.Report("SR3005", Severity.Error, headline, statement, fact.Span, "", [new Label(attribute.Info.Location, "declared here")], VerbRepair.For(fact.Attribute.Span, fact.Operands.IsEmpty ? null : fact.Operands[0].Span, !fact.IsList, statement));
        return false;
    }

    private FactValue? Number(AttributeDefinition attribute, ValueSyntax value, bool guess, StatementSyntax statement)
    {
        if (value.IsUnknown)
        {
            return FactValue.Unknown;
        }

        if (!numbers.HasOneUnit(value, statement) || numbers.For(attribute, value.AsOneNumber(), statement) is not { } number)
        {
            return null;
        }

        var factor = value.Number == 0 ? 1 : number / value.Number;
        var spread = value.Spread is { } said ? said.Number * factor : guess && attribute.Kind == AttributeKind.Rating ? 1 : 0;
        return value.High is { } high
            ? new FactValue(true, number, value.First!.Number * factor, high.Number * factor, [])
            : new FactValue(true, number, number - spread, number + spread, []);
    }

    private FactValue? Words(AttributeDefinition attribute, FactSyntax fact, StatementSyntax statement)
    {
        if (attribute.IsWord)
        {
            return codes.Of(attribute, Words(fact), statement) is { } found ? FactValue.Of(found) : null;
        }

        context.Report("SR3004", Severity.Error, $"\"{attribute.Name}\" is told in numbers, not in words", statement, fact.Operands[0].Span, "a word", [new Label(attribute.Info.Location, "declared here")], new Suggestion("write a number, or \"unknown\""));
        return null;
    }

    private static NameSyntax[] Words(FactSyntax fact) =>
        fact.Operands.Length == 1 ? fact.Operands[0].Name is { } word ? [word] : [] : [.. fact.Operands.Select(operand => operand.Name).OfType<NameSyntax>()];
}
