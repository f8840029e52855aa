using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Guarding;

/// <summary>Rules that never come to their effect: overridden wherever they hold, or a cap under which a lower one always stands.</summary>
internal static class Shadowed
{
    /// <summary>Reports them, with the rule that stands in their way.</summary>
    public static void Report(BoundRuleset ruleset, InferenceResult inferred, IReadOnlyList<RuleOutcome> own, DiagnosticBag findings)
    {
        foreach (var outcome in own.Where(outcome => outcome.Effective.IsEmpty && !outcome.Overridden.IsEmpty))
        {
            var others = inferred.Outcomes.Where(other => outcome.Statement.Info.Name is { } name && other.Statement.Info.Overrides.Any(overridden => NameText.Same(overridden, name)));
            Add(findings, outcome.Statement.Info, "is overridden wherever it holds", [.. others.Select(other => new Label(other.Statement.Info.Location, "overrides it"))]);
        }

        var caps = ruleset.Limits.Where(limit => limit.IsCap).Select(inferred.Outcome).ToList();
        foreach (var outcome in own.Where(outcome => outcome.Statement is LimitDefinition { IsCap: true } && !outcome.Effective.IsEmpty))
        {
            if (caps.Find(other => IsLower(ruleset, other, outcome) && outcome.Effective.IsSubsetOf(other.Effective)) is { } lower)
            {
                Add(findings, outcome.Statement.Info, "changes nothing: another cap is at least as low for all that it reaches", [new Label(lower.Statement.Info.Location, "the other cap")]);
            }
        }
    }

    // Of two caps with the same tier and reach the later one is said to change nothing.
    private static bool IsLower(BoundRuleset ruleset, RuleOutcome other, RuleOutcome outcome)
    {
        var (low, high) = (Rank(other), Rank(outcome));
        var same = low == high && other.Effective.Equals(outcome.Effective);
        return !ReferenceEquals(other, outcome) && (same ? ruleset.Limits.IndexOf((LimitDefinition)other.Statement) < ruleset.Limits.IndexOf((LimitDefinition)outcome.Statement) : low >= high);

        int Rank(RuleOutcome cap) => ruleset.Tiers.IndexOf(((LimitDefinition)cap.Statement).Tier);
    }

    private static void Add(DiagnosticBag findings, StatementInfo info, string what, Label[] others) =>
        findings.Add(new Diagnostic("SR4004", Severity.Warning, $"{char.ToUpperInvariant(info.Title[0])}{info.Title[1..]} {what}", new Label(info.Location, "has no effect"))
        {
            Within = info.Title,
            Section = info.Section,
            Others = [.. others],
            Suggestions = [new Suggestion("take it out, or narrow the other rule")],
        });
}
