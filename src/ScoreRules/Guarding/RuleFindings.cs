using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Guarding;

/// <summary>Rules of the house that do nothing, or not what they seem to do, over the movements there are.</summary>
public static class RuleFindings
{
    /// <summary>
    /// Reports them. Statements of the shared folder are left alone: they are written for all houses. So are rules about the
    /// person who asks, who is not known here.
    /// </summary>
    public static void Report(BoundRuleset ruleset, InferenceResult inferred, DiagnosticBag findings)
    {
        var own = inferred.Outcomes.Where(outcome => IsJudged(outcome.Statement)).ToList();
        if (inferred.Facts.RowCount == 0)
        {
            return;
        }

        foreach (var outcome in own)
        {
            Unmatched.Report(outcome, inferred, findings);
        }

        Undecided.Report(own, inferred, findings);
        Shadowed.Report(ruleset, inferred, own, findings);
        AlikeAwards.Report(inferred, own, findings);
    }

    /// <summary>The condition of a statement; null for one that has none.</summary>
    internal static Condition? ConditionOf(BoundStatement statement) => statement switch
    {
        ConditionalStatement rule => rule.Condition,
        CallDefinition call => call.Condition,
        _ => null,
    };

    private static bool IsJudged(BoundStatement statement) =>
        statement.Info.Location.Source.IsOwn && ConditionOf(statement) is { } condition
        && !ConditionWalk.AsksWho(condition);
}
