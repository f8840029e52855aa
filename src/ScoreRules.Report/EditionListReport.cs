using ScoreRules.Publishing;
using ScoreRules.Publishing.Editions;
using ScoreRules.Report.Components;
using ScoreRules.Report.Rendering;

namespace ScoreRules.Report;

/// <summary>The list of editions and what changed between neighbours, as one page. No script, no outside request; links lead to the files beside it.</summary>
public static class EditionListReport
{
    /// <summary>The page.</summary>
    public static string Render(EditionList list) =>
        Shell.Wrap(new PageFrame(list.Title, $"{list.Title}. {Sentences.Education}", Asset.EditionStyles), ComponentText.Render<EditionListPage>(nameof(EditionListPage.List), list));
}
