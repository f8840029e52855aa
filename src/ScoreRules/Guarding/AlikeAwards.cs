using System.Globalization;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Guarding;

/// <summary>Two rules that give (or take) points for exactly the same movements: one merit may be counted twice.</summary>
internal static class AlikeAwards
{
    private const int FewestRows = 3;

    /// <summary>Reports the later of the two.</summary>
    public static void Report(InferenceResult inferred, IReadOnlyList<RuleOutcome> own, DiagnosticBag findings)
    {
        var awards = own.Where(outcome => outcome.Statement is AwardDefinition && outcome.Effective.Count >= FewestRows && outcome.Effective.Count < inferred.Facts.RowCount);
        foreach (var alike in awards.GroupBy(outcome => (outcome.Effective, ((AwardDefinition)outcome.Statement).Points > 0)).Select(group => group.ToList()).Where(group => group.Count > 1))
        {
            foreach (var later in alike.Skip(1))
            {
                Add(later, alike[0].Statement.Info, findings);
            }
        }
    }

    private static void Add(RuleOutcome later, StatementInfo first, DiagnosticBag findings)
    {
        var info = later.Statement.Info;
        var headline = string.Create(CultureInfo.InvariantCulture, $"Two rules \"{info.Kind}\" points for exactly the same {later.Effective.Count} placements");
        findings.Add(new Diagnostic("SR4002", Severity.Warning, headline, new Label(info.Location, "and again here"))
        {
            Within = info.Title,
            Section = info.Section,
            Others = [new Label(first.Location, "counted here")],
            Notes = ["without \"overrides\" both count: their points add up"],
            Suggestions = [new Suggestion("let one of them override the other, make one rule of both, or narrow one of them")],
        });
    }
}
