using System.Globalization;
using ScoreRules.Catalogue;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Guarding;

/// <summary>Facts that are not recorded though rules ask for them, so that those rules cannot be told: "unknown" is not "no".</summary>
internal static class Undecided
{
    /// <summary>Reports each such attribute once, with the first rule that asks for it and the first movement that lacks it.</summary>
    public static void Report(IEnumerable<RuleOutcome> own, InferenceResult inferred, DiagnosticBag findings)
    {
        var lacking = own.Where(outcome => outcome.Statement is not CallDefinition && !outcome.CouldNotTell.IsEmpty)
            .Select(outcome => (outcome.Statement.Info, outcome.CouldNotTell, Attribute: LackedBy(outcome, inferred)))
            .Where(rule => rule.Attribute is not null);
        foreach (var rules in lacking.GroupBy(rule => rule.Attribute!.Index).Select(group => group.ToList()))
        {
            var movements = rules.SelectMany(rule => rule.CouldNotTell).Distinct().Order().Select(row => inferred.Facts.Rows[row].Movement).DistinctBy(movement => movement.Index).ToList();
            Add(rules[0].Attribute!, rules[0].Info, rules.Count - 1, movements, findings);
        }
    }

    private static AttributeDefinition? LackedBy(RuleOutcome outcome, InferenceResult inferred) =>
        RuleFindings.ConditionOf(outcome.Statement) is { } condition ? ConditionTrace.Explain(condition, outcome.CouldNotTell.First(), inferred).FirstDecisive()?.Attribute : null;

    private static void Add(AttributeDefinition attribute, StatementInfo rule, int more, List<Movement> movements, DiagnosticBag findings)
    {
        var where = movements.Count == 1 ? $"\"{movements[0].Name}\"" : string.Create(CultureInfo.InvariantCulture, $"{movements.Count} movements, the first \"{movements[0].Name}\"");
        var others = more == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $" and {more} more {(more == 1 ? "rule" : "rules")}");
        findings.Add(new Diagnostic("SR7003", Severity.Warning, $"\"{attribute.Name}\" is not recorded for {where}, so {rule.Title}{others} cannot be told there", new Label(rule.Location, "asks for it"))
        {
            Within = rule.Title,
            Section = rule.Section,
            Others = [new Label(movements[0].Location, "not recorded here")],
            Notes = ["unknown is not \"no\": the rule is listed there as \"could not tell\""],
            Suggestions = [new Suggestion($"record \"{attribute.Name}\", or say in the rule what holds without it: \"or when {attribute.Name} is unknown\"")],
        });
    }
}
