using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Inference.Engine;

/// <summary>
/// Works a recipe out for all rows. A number is unknown where an operand that is used is unknown, where it cannot be told
/// whether a step is done, where something is divided by zero, and outside the recipe's scope.
/// </summary>
internal static class RecipeKernel
{
    /// <summary>The numbers made.</summary>
    public static NumberColumn Run(RecipeDefinition recipe, IFactSource source, ConditionEvaluator evaluator, RowSet inScope)
    {
        var count = source.Facts.RowCount;
        var numbers = NumberColumn.Blank(count);
        foreach (var step in recipe.Steps)
        {
            Take(step, numbers.AsSpan(0, count), source, evaluator);
        }

        foreach (var row in inScope.Not())
        {
            numbers[row] = double.NaN;
        }

        return new NumberColumn(count, numbers);
    }

    private static void Take(RecipeStep step, Span<double> numbers, IFactSource source, ConditionEvaluator evaluator)
    {
        var where = step.Condition is null ? null : evaluator.Evaluate(step.Condition, source);
        var column = step.Attribute is null ? null : source.Facts.Numbers(step.Attribute);
        for (var row = 0; row < numbers.Length; row++)
        {
            numbers[row] = (where?.VerdictOf(row) ?? Verdict.Held) switch
            {
                Verdict.Held => Next(step.Operation, numbers[row], column is null ? step.Number : column[row]),
                Verdict.DidNotHold => numbers[row],
                _ => double.NaN,
            };
        }
    }

    private static double Next(RecipeOperation operation, double number, double operand)
    {
        var next = operation switch
        {
            RecipeOperation.StartWith => operand,
            RecipeOperation.Plus => number + operand,
            RecipeOperation.Minus => number - operand,
            RecipeOperation.Times => number * operand,
            RecipeOperation.DividedBy => NumberColumn.AsCompared(operand) == 0 ? double.NaN : number / operand,
            RecipeOperation.AtLeast => Math.Max(number, operand),
            RecipeOperation.AtMost => Math.Min(number, operand),
            _ => double.NaN,
        };
        return double.IsFinite(next) ? next : double.NaN;
    }
}
