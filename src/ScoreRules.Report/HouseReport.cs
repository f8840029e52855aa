using ScoreRules.Certainty;
using ScoreRules.Report.Components;
using ScoreRules.Report.Rendering;
using ScoreRules.Report.Views;

namespace ScoreRules.Report;

/// <summary>One judged house as one self-contained page: no outside request, readable without scripts, the same bytes for the same judgement.</summary>
public static class HouseReport
{
    /// <summary>Renders the page.</summary>
    /// <param name="judgement">A judgement with rankings.</param>
    /// <param name="slots">Parts that other analyses add; left out, none.</param>
    /// <param name="certainty">How sure its placements are; left out, the page does not say.</param>
    /// <exception cref="InvalidOperationException">Nothing was ranked.</exception>
    public static string Render(Judgement judgement, ReportSlots? slots = null, HouseCertainty? certainty = null)
    {
        var given = slots ?? ReportSlots.None;
        var view = new ReportView(judgement, certainty is null ? given : CertaintySlots.Over(given, certainty, judgement.Ruleset)) { Certainty = certainty };
        return Shell.Wrap(view, ComponentText.Render<Page>(nameof(Page.View), view));
    }
}
