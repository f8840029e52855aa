using ScoreRules.Catalogue;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Scoring;

/// <summary>Findings that need the catalogue: criteria on facts that nobody recorded, targets without any criterion.</summary>
public static class ScoreFindings
{
    private const int MostNamed = 5;

    /// <summary>Reports them.</summary>
    public static void Report(BoundRuleset ruleset, InferenceResult inferred, ScoreTable scores, DiagnosticBag findings)
    {
        foreach (var column in scores.Criteria.Where(column => column.Criterion.UnknownWorth is null))
        {
            ReportUnknown(column, inferred.Facts, findings);
        }

        foreach (var target in ruleset.Targets.Where(target => !ruleset.Criteria.IsEmpty && scores.Criteria.All(column => column.Weights[target.Index] == 0)))
        {
            findings.Add(new Diagnostic("SR5005", Severity.Error, $"No criterion counts for \"{target.Name}\"", new Label(target.Info.Location, "declared here"))
            {
                Suggestions = [new Suggestion("let a criterion count for it, or take the target out")],
            });
        }
    }

    private static void ReportUnknown(CriterionColumn column, FactTable facts, DiagnosticBag findings)
    {
        var missing = facts.Rows.Where(row => column.Attributes[row.Target.Index] is { } attribute && !facts.Fact(row.Index, attribute).Value.IsKnown)
            .Select(row => (row.Movement, Attribute: column.Attributes[row.Target.Index]!)).DistinctBy(pair => pair.Movement.Index).ToList();
        if (missing.Count == 0)
        {
            return;
        }

        var info = column.Criterion.Info;
        var names = string.Join(", ", missing.Take(MostNamed).Select(pair => pair.Movement.Name));
        var more = missing.Count > MostNamed ? $" and {missing.Count - MostNamed} more" : "";
        findings.Add(new Diagnostic("SR5001", Severity.Error, $"Criterion \"{column.Criterion.Name}\" reads \"{missing[0].Attribute.Name}\", which is not recorded for {names}{more}", new Label(info.Location, "does not say what an unknown value is worth"))
        {
            Section = info.Section,
            Others = [new Label(missing[0].Movement.Location, $"has no \"{missing[0].Attribute.Name}\"")],
            Notes = ["unknown is neither nothing nor the worst: it widens the doubt"],
            Suggestions = [new Suggestion("record the fact, or add a line such as \"unknown is worth 40%\" to the criterion")],
        });
    }
}
