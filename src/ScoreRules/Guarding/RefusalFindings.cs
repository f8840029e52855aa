using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Guarding;

/// <summary>Movements whose facts contradict one another.</summary>
public static class RefusalFindings
{
    /// <summary>Reports each movement once for each contradiction.</summary>
    public static void Report(BoundRuleset ruleset, InferenceResult inferred, DiagnosticBag findings)
    {
        foreach (var refusal in ruleset.Refusals)
        {
            var movements = inferred.Outcome(refusal).Effective.Select(row => inferred.Facts.Rows[row].Movement).DistinctBy(movement => movement.Index);
            foreach (var movement in movements)
            {
                var facts = ConditionWalk.Tests(refusal.Condition).OfType<AttributeTest>().Select(test => movement.Facts[test.Attribute.Index].Location).OfType<Language.Text.SourceLocation>().ToList();
                findings.Add(new Diagnostic("SR7002", Severity.Error, $"\"{movement.Name}\": {refusal.Info.Because ?? "these facts contradict one another"}", new Label(facts.Count > 0 ? facts[0] : movement.Location, "does not go together"))
                {
                    Within = $"movement \"{movement.Name}\"",
                    Others = [.. facts.Skip(1).Distinct().Select(place => new Label(place, "with this")), new Label(refusal.Info.Location, "refused by this rule")],
                    Suggestions = [new Suggestion("mend one of the facts; if both are right, narrow the rule")],
                });
            }
        }
    }
}
