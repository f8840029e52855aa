using Humanizer;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Publishing;

namespace ScoreRules.Report.Views;

/// <summary>What a reader should know of the house before its results: what fails, what is missing, what looks lopsided.</summary>
internal static class Completeness
{
    private const int TopTiers = 2;

    /// <summary>The notes, most serious first.</summary>
    public static IEnumerable<string> Notes(ReportView view) => [.. Errors(view), .. Expectations(view), .. Lopsided(view), .. Warnings(view)];

    private static IEnumerable<string> Errors(ReportView view)
    {
        var errors = view.Judgement.Findings.Where(finding => finding.Severity == Severity.Error).ToList();
        if (errors.Count > 0)
        {
            yield return $"Not complete: this page was made despite {"error".ToQuantity(errors.Count)}. What could not be read is left out of account, cautions too. Do not rely on it.";
        }

        foreach (var error in errors)
        {
            yield return view.Places.Shorten(DiagnosticText.Short(error));
        }
    }

    private static IEnumerable<string> Expectations(ReportView view) =>
        view.Judgement.Expectations.Where(result => !result.Holds).Select(failed => $"An expectation of the authors fails ({view.Places.Of(failed.Expectation.Info.Location)}): {failed.Found}");

    private static IEnumerable<string> Lopsided(ReportView view)
    {
        var targets = view.Targets.Where(target => target.Ranking.Placements.Length > 0 && target.Tiers.Length > TopTiers).ToList();
        var bare = targets.Where(target => target.Tiers.Take(TopTiers).All(tier => tier.Cards.IsEmpty)).Select(target => target.Target.Name).ToList();
        if (bare.Count > 0)
        {
            yield return $"Nothing stands in the top two tiers of {FactText.Join(bare)}.";
        }

        var crowded = targets.Select(Crowded).OfType<string>().ToList();
        if (crowded.Count > 0)
        {
            yield return $"More than half of a list stands in one tier: {string.Join("; ", crowded)}.";
        }
    }

    private static string? Crowded(TargetView target) =>
        target.Tiers.FirstOrDefault(tier => tier.Cards.Length * 2 > target.Ranking.Placements.Length) is { } tier
            ? $"{target.Target.Name}, {NumberText.Count(tier.Cards.Length)} of {NumberText.Count(target.Ranking.Placements.Length)} in {tier.Tier.Name}"
            : null;

    private static IEnumerable<string> Warnings(ReportView view)
    {
        var warnings = view.Judgement.Findings.Count(finding => finding.Severity == Severity.Warning);
        if (warnings > 0)
        {
            yield return $"{"warning".ToQuantity(warnings).Transform(To.SentenceCase)} about the rules; scorerules check names each.";
        }
    }
}
