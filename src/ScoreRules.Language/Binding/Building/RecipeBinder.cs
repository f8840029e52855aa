using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds recipes: the steps of <c>work out</c>.</summary>
internal sealed class RecipeBinder(BindContext context)
{
    private static readonly string[] Order = ["start with", "plus", "minus", "times", "divided by", "at least", "at most"];
    private readonly ConditionBinder conditions = new(context);
    private readonly Numbers numbers = new(context);

    /// <summary>The recipe; null when a step was reported.</summary>
    public RecipeDefinition? Bind(StatementSyntax statement, InfoBinder info)
    {
        var result = context.Attributes.TryFind(statement.Head<NameSyntax>().Text);
        if (result is not { IsWorkedOut: true })
        {
            return null;
        }

        var steps = ImmutableArray.CreateBuilder<RecipeStep>();
        var sound = statement.IsWhole;
        foreach (var line in statement.Lines)
        {
            if (line is ClauseSyntax<StepSyntax> step)
            {
                var bound = Step(step, result, statement);
                sound &= bound is not null;
                steps.Add(bound ?? new RecipeStep(RecipeOperation.Plus, 0, null, null, statement.At(line.Span)));
            }
            else if (line is ClauseSyntax<ConditionLineSyntax> when)
            {
                sound &= Attach(steps, when, statement);
            }
        }

        return sound && steps.Count > 0 && CheckStart(statement) ? new RecipeDefinition(info.Bind(statement, statement.Head<NameSyntax>()), result, steps.ToImmutable()[..], 0) : null;
    }

    private bool Attach(ImmutableArray<RecipeStep>.Builder steps, ClauseSyntax<ConditionLineSyntax> line, StatementSyntax statement)
    {
        if (conditions.BindLine(line.Content, statement) is not { } condition || steps.Count == 0)
        {
            return false;
        }

        var step = steps[^1];
        steps[^1] = step with { Condition = step.Condition is null ? condition : new AllOf([step.Condition, condition], condition.Location) };
        return true;
    }

    private bool CheckStart(StatementSyntax statement)
    {
        var first = statement.Lines.OfType<ClauseSyntax<StepSyntax>>().First();
        if (first.Spec == RuleGrammar.StartWith || !statement.Has(RuleGrammar.StartWith))
        {
            return first.Spec == RuleGrammar.StartWith;
        }

        context.Error("SR1007", "A recipe begins with \"start with\"", statement, first.Span, "", new Suggestion("move the line \"start with\" to the top"));
        return false;
    }

    private RecipeStep? Step(ClauseSyntax<StepSyntax> line, AttributeDefinition result, StatementSyntax statement)
    {
        var operation = (RecipeOperation)Array.IndexOf(Order, line.Content.Words);
        var scales = operation is RecipeOperation.Times or RecipeOperation.DividedBy;
        var operand = line.Content.Operand;
        if (operand.Name is { } name)
        {
            var attribute = context.Attributes.Find(name, statement);
            return attribute is null || !Fits(attribute, result, scales, name, statement) ? null : new RecipeStep(operation, double.NaN, attribute, null, statement.At(line.Span));
        }

        return Number(operand.Value!, result, scales, statement) is { } number ? new RecipeStep(operation, number, null, null, statement.At(line.Span)) : null;
    }

    private bool Fits(AttributeDefinition attribute, AttributeDefinition result, bool scales, NameSyntax name, StatementSyntax statement)
    {
        var sameUnit = attribute.Kind == AttributeKind.Rating || scales || string.Equals(attribute.Unit, result.Unit, StringComparison.OrdinalIgnoreCase);
        if (!attribute.IsWord && sameUnit)
        {
            return true;
        }

        context.Report("SR5008", Severity.Error, attribute.IsWord ? $"\"{attribute.Name}\" is told in words and cannot be counted with" : $"\"{attribute.Name}\" is measured in {attribute.Unit}, \"{result.Name}\" in {result.Unit}",
            statement, name.Span, "", [new Label(attribute.Info.Location, "declared here")], new Suggestion("use numbers of the unit named by the line \"in ...\""));
        return false;
    }

    private double? Number(ValueSyntax value, AttributeDefinition result, bool scales, StatementSyntax statement)
    {
        if (!numbers.IsOneNumber(value, statement))
        {
            return null;
        }

        if (scales ? value.Unit is null or "times" : result.Unit is "times" or "repetitions" && value.Unit is null)
        {
            return value.Number;
        }

        if (!scales && value.Unit is not null && UnitConversion.TryConvert(value.Number, value.Unit, result.Unit!, out var converted))
        {
            return converted;
        }

        context.Error("SR5008", scales ? "A recipe is multiplied or divided by a plain number" : $"This recipe counts in {result.Unit}", statement, value.Span, value.Unit is null ? "no unit" : $"in {value.Unit}",
            new Suggestion(scales ? "write the number alone" : $"write the number in {result.Unit}"));
        return null;
    }
}
