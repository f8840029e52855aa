using ScoreRules.Language.Binding;
using ScoreRules.Report.Views;

namespace ScoreRules.Report.Components;

/// <summary>The cautions that stand at the foot of every sheet.</summary>
internal static class StopLine
{
    /// <summary>All of them, on one line.</summary>
    public static string Text(ReportView view) => string.Join(' ', view.Cautions(CautionPlace.AtTheFoot).Select(caution => caution.Caution.Text));
}
