using ScoreRules.Publishing;
using ScoreRules.Report.Components;
using ScoreRules.Report.Rendering;
using ScoreRules.Report.Views;
using ScoreRules.Teaching;

namespace ScoreRules.Report;

/// <summary>A lesson as a page to read and talk from, or as slides: one for each movement, each a sheet on paper. No script, no outside request.</summary>
public static class LessonReport
{
    /// <summary>The page.</summary>
    /// <exception cref="InvalidOperationException">Nothing was ranked.</exception>
    public static string Page(Judgement judgement, Lesson lesson) => Render(new LessonView(judgement, lesson, AreSlides: false), Asset.LessonStyles);

    /// <summary>The slides.</summary>
    /// <exception cref="InvalidOperationException">Nothing was ranked.</exception>
    public static string Slides(Judgement judgement, Lesson lesson) => Render(new LessonView(judgement, lesson, AreSlides: true), Asset.SlideStyles);

    private static string Render(LessonView view, string styles)
    {
        var margin = $"{view.Edition.Text}. {view.Stop} {Sentences.Education}";
        return Shell.Wrap(new PageFrame($"{view.Edition.House}: {view.Title}", margin, styles), ComponentText.Render<LessonPage>(nameof(LessonPage.View), view));
    }
}
