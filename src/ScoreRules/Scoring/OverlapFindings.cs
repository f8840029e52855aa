using System.Globalization;
using MathNet.Numerics.Statistics;
using ScoreRules.Inference;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Scoring;

/// <summary>
/// Warns where a house weights two criteria that put its movements into nearly the same order, at least one of them by a fact of
/// mechanics: one thing then counts twice. The measure is Spearman's rank correlation of their worths, ties by mean rank.
/// </summary>
public static class OverlapFindings
{
    /// <summary>Rank correlation from which two criteria are said to overlap; chosen with the design, no source.</summary>
    public const double Much = 0.75;

    /// <summary>Fewest placements for which both are known; fewer say nothing.</summary>
    public const int FewestRows = 6;

    /// <summary>Reports them.</summary>
    /// <param name="inferred">The facts.</param>
    /// <param name="scores">The scores.</param>
    /// <param name="findings">Receives SR4010.</param>
    public static void Report(InferenceResult inferred, ScoreTable scores, DiagnosticBag findings)
    {
        for (var i = 0; i < scores.Criteria.Length; i++)
        {
            for (var j = i + 1; j < scores.Criteria.Length; j++)
            {
                var (first, second) = (scores.Criteria[i], scores.Criteria[j]);
                if ((IsDerived(first) || IsDerived(second)) && Overlap(inferred, first, second) is { Rho: >= Much } overlap)
                {
                    findings.Add(Finding(first, second, overlap));
                }
            }
        }
    }

    private static bool IsDerived(CriterionColumn column) => column.Attributes.Any(attribute => attribute is { IsDerived: true });

    private static (double Rho, int Rows)? Overlap(InferenceResult inferred, CriterionColumn first, CriterionColumn second)
    {
        var rows = inferred.Facts.Rows.Where(row => Counts(inferred, first, row) && Counts(inferred, second, row)).Select(row => row.Index).ToList();
        return rows.Count < FewestRows ? null
            : (Correlation.Spearman(rows.Select(row => first.Worth[row]), rows.Select(row => second.Worth[row])), rows.Count);
    }

    // A worth that stands for something unknown says nothing about order.
    private static bool Counts(InferenceResult inferred, CriterionColumn column, Catalogue.PlacementRow row) =>
        column.Weights[row.Target.Index] > 0 && !double.IsNaN(column.Worth[row.Index])
        && column.Attributes[row.Target.Index] is { } attribute && inferred.Facts.Fact(row.Index, attribute).Value.IsKnown;

    private static Diagnostic Finding(CriterionColumn first, CriterionColumn second, (double Rho, int Rows) overlap)
    {
        // The later one is usually the one that was added.
        var (told, other) = IsDerived(second) ? (second, first) : (first, second);
        var rho = Math.Round(overlap.Rho, 2, MidpointRounding.AwayFromZero).ToString("0.00", CultureInfo.InvariantCulture);
        return new Diagnostic(
            "SR4010", Severity.Warning,
            $"\"{first.Criterion.Name}\" and \"{second.Criterion.Name}\" put movements in nearly the same order, so one thing counts twice",
            new Label(Reads(told), "counts much of it again"))
        {
            Section = told.Criterion.Info.Section,
            Others = [new Label(Reads(other), "counts it first")],
            Notes = [$"their rank correlation is {rho} over {overlap.Rows} placements for which both are known; 1 is the same order, 0 none"],
            Suggestions = [new Suggestion("keep one of them, lower their weights, or read \"load profile\" beside \"longest length under load\", which overlap little"), new Suggestion("say why both count with \"accept SR4010 because ...\"")],
        };
    }

    private static Language.Text.SourceLocation Reads(CriterionColumn column) => column.Criterion.Readings[0].Location;
}
