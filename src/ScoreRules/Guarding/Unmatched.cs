using System.Globalization;
using ScoreRules.Catalogue;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Guarding;

/// <summary>Rules whose condition holds for no movement: often a word or a number other than the one that was meant.</summary>
internal static class Unmatched
{
    /// <summary>Reports such a rule, with the part of its condition that lets the fewest through.</summary>
    public static void Report(RuleOutcome outcome, InferenceResult inferred, DiagnosticBag findings)
    {
        if (outcome.Condition.Possible.And(outcome.InScope).IsEmpty && RuleFindings.ConditionOf(outcome.Statement) is { } condition and not Everything)
        {
            var info = outcome.Statement.Info;
            findings.Add(new Diagnostic("SR4005", Severity.Warning, $"The condition of {info.Title} holds for no movement", new Label(condition.Location, "holds nowhere"))
            {
                Within = info.Title,
                Section = info.Section,
                Notes = [.. Narrowest(condition, outcome.InScope, inferred)],
                Suggestions = [new Suggestion("look at its words and numbers; if it is kept for movements to come, add \"accept SR4005 because ...\"")],
            });
        }
    }

    private static IEnumerable<string> Narrowest(Condition condition, RowSet scope, InferenceResult inferred)
    {
        if (scope.IsEmpty)
        {
            return ["it is about no movement: look at \"only for\" and \"except for\""];
        }

        var counted = (condition is AllOf all ? all.Parts : [condition]).Select(part => (part.Location.Text, Count: inferred.Evaluator.Evaluate(part, inferred).Possible.And(scope).Count)).ToList();
        return counted.Count == 1 ? [] : counted.Select(part => string.Create(CultureInfo.InvariantCulture, $"\"{Told(part.Text)}\" alone holds in {part.Count} of {scope.Count} placements"));
    }

    private static string Told(string text) => string.Join(' ', text.Split([' ', '\n', '\r', '\t'], StringSplitOptions.RemoveEmptyEntries));
}
