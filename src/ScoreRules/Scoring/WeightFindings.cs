using System.Globalization;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Weighting;

namespace ScoreRules.Scoring;

/// <summary>What can be wrong with weights by order and by comparison.</summary>
internal static class WeightFindings
{
    private const double Tolerance = 1.1;
    private const string Numbered = "a criterion that has a number";

    /// <summary>Warns of comparisons that contradict one another, and of those that contradict written numbers.</summary>
    public static void Check(WeightsDefinition statement, double[] given, PairwiseComparison[] comparisons, DiagnosticBag findings)
    {
        if (given.Length > 2 && comparisons.Length > 0 && ComparisonGraph.Parts(given.Length, comparisons).Count == 1)
        {
            CheckConsistency(statement, comparisons, findings);
        }

        foreach (var (comparison, at) in comparisons.Select((comparison, at) => (comparison, at)).Where(pair => double.IsFinite(given[pair.comparison.First]) && double.IsFinite(given[pair.comparison.Second])))
        {
            var actual = given[comparison.First] / given[comparison.Second];
            if (Math.Max(actual / comparison.Ratio, comparison.Ratio / actual) > Tolerance)
            {
                var said = statement.Comparisons[at];
                findings.Add(Finding("SR5006", Severity.Warning, $"\"{said.First}\" is said to be {Times(said.Times)} as important as \"{said.Second}\", and their numbers say {Times(actual)}", said.Location, "the numbers count",
                    "change one of the numbers, or let one of the two \"count by weights\""));
            }
        }
    }

    /// <summary>Criteria that no comparison joins to the others, or to one with a number; null when all are joined.</summary>
    public static Diagnostic? Unjoined(WeightsDefinition statement, double[] given, PairwiseComparison[] comparisons)
    {
        var anchored = given.Any(double.IsFinite);
        var parts = ComparisonGraph.Parts(given.Length, comparisons);
        var loose = anchored ? parts.FirstOrDefault(part => !part.Any(at => double.IsFinite(given[at]))) : parts.Count > 1 ? parts[1] : null;
        return loose is null ? null : NotCompared(statement, loose, anchored ? Numbered : List(parts[0], statement), "add a comparison that joins them");
    }

    /// <summary>Weights that stand beside criteria with numbers and name none of them, so that nothing says how the two compare.</summary>
    public static Diagnostic WithoutScale(WeightsDefinition statement) =>
        NotCompared(statement, [.. Enumerable.Range(0, statement.Criteria.Length)], Numbered, "name one of the criteria that have a number here too: it sets the scale");

    /// <summary>A criterion that counts by weights and that no statement of weights names.</summary>
    /// <param name="criterion">The criterion.</param>
    /// <param name="weight">The line that says so.</param>
    /// <param name="target">A target for which none does; null when none does for any.</param>
    /// <param name="absent">Weights that are not in force on the day to judge for.</param>
    public static Diagnostic NotNamed(CriterionDefinition criterion, CriterionWeight weight, TargetDefinition? target, IEnumerable<StatementInfo> absent) =>
        Finding("SR5012", Severity.Error, $"Criterion \"{criterion.Name}\" counts by weights, and no weights {(target is null ? "" : $"for \"{target.Name}\" ")}name it", weight.Location, "which weight?", "name it in the statement \"weights\", or write a number: \"counts 10 parts\"") with
        {
            Others = [.. absent.Select(info => new Label(info.Location, "not in force on this day"))],
        };

    /// <summary>A criterion that two statements of weights name.</summary>
    public static Diagnostic Twice(string name, WeightsDefinition second, WeightsDefinition first) =>
        Finding("SR5018", Severity.Error, $"Two statements give \"{name}\" its weight", second.Info.Location, "second time", "put both into one statement") with { Others = [new Label(first.Info.Location, "first time")] };

    private static void CheckConsistency(WeightsDefinition statement, PairwiseComparison[] comparisons, DiagnosticBag findings)
    {
        var names = statement.Criteria;
        var ratio = ConsistencyRatio.Of(names.Length, comparisons);
        if (ratio.Value <= ConsistencyRatio.Threshold || CircularTriad.Worst(names.Length, comparisons) is not { } triad)
        {
            return;
        }

        var number = ratio.Value.ToString("0.00", CultureInfo.InvariantCulture);
        var words = $"\"{names[triad.First]}\" is said to matter {Times(triad.FirstToSecond)} as much as \"{names[triad.Second]}\", that {Times(triad.SecondToThird)} as much as \"{names[triad.Third]}\", so by these two {Times(triad.Implied)}; but the first is said to matter {Times(triad.FirstToThird)} as much as the last";
        findings.Add(Finding("SR5014", Severity.Warning, "These comparisons do not go together", statement.Info.Location, $"consistency ratio {number}", "change one of the three comparisons") with
        {
            Notes = [words, $"the consistency ratio should be 0.10 or less ({RandomIndex.Name}); the weights are the best middle way"],
        });
    }

    private static Diagnostic NotCompared(WeightsDefinition statement, IReadOnlyList<int> part, string with, string advice) =>
        Finding("SR5013", Severity.Error, $"Nothing compares {List(part, statement)} with {with}", statement.Info.Location, "", advice);

    private static string List(IReadOnlyList<int> part, WeightsDefinition statement) => string.Join(", ", part.Select(at => $"\"{statement.Criteria[at]}\""));

    private static string Times(double ratio) => string.Create(CultureInfo.InvariantCulture, $"{Math.Round(ratio, 2):0.##} {(Math.Abs(ratio - 1) < 0.005 ? "time" : "times")}");

    private static Diagnostic Finding(string code, Severity severity, string headline, Language.Text.SourceLocation place, string label, string advice) =>
        new(code, severity, headline, new Label(place, label)) { Suggestions = [new Suggestion(advice)] };
}
