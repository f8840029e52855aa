using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Inference;

/// <summary>Works a recipe out for all rows at once. Unknown operands, undecided steps and division by zero give unknown (NaN).</summary>
internal static class RecipeKernel
{
    // Numbers are told apart after rounding to 1e-9; what rounds to zero divides nothing.
    private const double SmallestDivisor = 0.5e-9;

    /// <summary>The column of the result.</summary>
    public static double[] Evaluate(RecipeDefinition recipe, FactTable facts, Func<Condition, ThreeValuedSet> evaluate)
    {
        var result = new double[facts.RowCount];
        Array.Fill(result, double.NaN);
        foreach (var step in recipe.Steps)
        {
            var where = step.Condition is null ? ThreeValuedSet.All(facts.RowCount) : evaluate(step.Condition);
            var operands = step.Attribute is null ? null : facts.Numbers(step.Attribute);
            for (var row = 0; row < result.Length; row++)
            {
                result[row] = where.VerdictOf(row) switch
                {
                    Verdict.Held => Apply(step.Operation, result[row], operands is null ? step.Number : operands[row]),
                    Verdict.CouldNotTell => double.NaN,
                    _ => result[row],
                };
            }
        }

        return result;
    }

    private static double Apply(RecipeOperation operation, double value, double operand)
    {
        var result = operation switch
        {
            RecipeOperation.StartWith => operand,
            RecipeOperation.Plus => value + operand,
            RecipeOperation.Minus => value - operand,
            RecipeOperation.Times => value * operand,
            RecipeOperation.DividedBy => Math.Abs(operand) < SmallestDivisor ? double.NaN : value / operand,
            RecipeOperation.AtLeast => Math.Max(value, operand),
            _ => Math.Min(value, operand),
        };
        return double.IsFinite(result) ? result : double.NaN;
    }
}
