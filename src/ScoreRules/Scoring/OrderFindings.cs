using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Scoring;

/// <summary>Orders of importance that written numbers contradict. Equal numbers do not: the weights that agree with an order include them.</summary>
internal static class OrderFindings
{
    private const double Smallest = 1e-9;

    /// <summary>Warns where a criterion counts less than the one below it in the order.</summary>
    /// <param name="statement">The order.</param>
    /// <param name="given">The numbers that its criteria have of their own.</param>
    /// <param name="weights">What the order gives those that have none.</param>
    /// <param name="findings">Where findings go.</param>
    public static void Check(WeightsDefinition statement, IReadOnlyList<CriterionWeight?> given, double[] weights, DiagnosticBag findings)
    {
        for (var below = 1; below < weights.Length; below++)
        {
            var (first, second) = (Number(below - 1), Number(below));
            if (second - first > Smallest)
            {
                findings.Add(Reversed(statement, given, below, (first, second)));
            }
        }

        double Number(int at) => given[at]?.Amount?.Number ?? weights[at];
    }

    private static Diagnostic Reversed(WeightsDefinition statement, IReadOnlyList<CriterionWeight?> given, int below, (double First, double Second) numbers)
    {
        var (first, second) = (statement.Order[below - 1], statement.Order[below]);
        var label = new Label(second.Location, "less important by the order");
        return new Diagnostic("SR5023", Severity.Warning, $"\"{first.Name}\" stands before \"{second.Name}\" in the order and counts less: {Plain(numbers.First)} against {Plain(numbers.Second)}", label)
        {
            Others = [.. new[] { given[below - 1], given[below] }.OfType<CriterionWeight>().Where(weight => weight.Amount is not null).Select(weight => new Label(weight.Location, "this number counts"))],
            Suggestions = [new Suggestion("change the order or a number, or let one more criterion \"count by weights\"")],
        };
    }

    private static string Plain(double number) => Math.Round(number, 1).ToString("0.#", System.Globalization.CultureInfo.InvariantCulture);
}
