using Humanizer;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Publishing;

/// <summary>Says, above a ranking that was made despite errors, what it does not take into account.</summary>
internal static class BrokenText
{
    /// <summary>Prints it; nothing for a house without errors.</summary>
    public static void Print(TextBlock block, Judgement judgement)
    {
        var errors = judgement.Findings.Where(finding => finding.Severity == Severity.Error).ToList();
        if (errors.Count == 0)
        {
            return;
        }

        block.Labelled("Not complete", $"this ranking was made despite {"error".ToQuantity(errors.Count)}. What could not be read is left out of account. Do not rely on it.");
        var missing = judgement.Ruleset.Targets.Select(target => target.Name).Except(judgement.Rankings.Select(ranking => ranking.Target.Name), StringComparer.Ordinal).ToList();
        if (missing.Count > 0)
        {
            block.Labelled("Not ranked", $"too little is left for {string.Join(", ", missing)}.");
        }

        var safety = new SafetyReliance(judgement.Ruleset);
        foreach (var error in errors.Where(safety.Concerns))
        {
            block.Labelled("", $"may take a caution or a limit away: {DiagnosticText.Short(error)}");
        }

        foreach (var error in errors.Where(error => !safety.Concerns(error)))
        {
            block.Labelled("", DiagnosticText.Short(error));
        }
    }
}
