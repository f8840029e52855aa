using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Publishing;
using ScoreRules.Publishing.Lessons;
using ScoreRules.Teaching;
using ScoreRules.Tiering;

namespace ScoreRules.Report.Views;

/// <summary>A lesson as a page or as slides show it.</summary>
/// <param name="Judgement">The judgement it is part of.</param>
/// <param name="Lesson">The lesson.</param>
/// <param name="AreSlides">Whether each movement is a slide.</param>
public sealed record LessonView(Judgement Judgement, Lesson Lesson, bool AreSlides)
{
    private readonly CautionList cautions = new([Lesson.Ranking], Judgement.Explainer ?? throw new InvalidOperationException("Nothing was ranked."));

    /// <summary>Cautions before everything else.</summary>
    public ImmutableArray<string> Above => [.. cautions.At(CautionPlace.AboveTheRanking).Select(caution => caution.Caution.Text)];

    /// <summary>The cautions of the foot, on one line.</summary>
    public string Stop => string.Join(' ', cautions.At(CautionPlace.AtTheFoot).Select(caution => caution.Caution.Text));

    /// <summary>Its title.</summary>
    public string Title => LessonWords.Title(Lesson);

    /// <summary>File names, shortened.</summary>
    public PlaceNames Places { get; } = new(Judgement.Sources);

    /// <summary>Depth of hue of each tier.</summary>
    public TierShading Shading { get; } = new(Judgement.Ruleset.Tiers);

    /// <summary>The largest part of any step, in points: all bars share it as their scale.</summary>
    public double Widest { get; } = Math.Max(1, Lesson.Steps.SelectMany(step => step.Parts).Select(part => Math.Abs(part.Points)).DefaultIfEmpty(1).Max());

    /// <summary>The edition.</summary>
    internal Edition Edition { get; } = Edition.Of(Judgement);

    /// <summary>The parts of a step that show at one decimal, and the names of those that do not.</summary>
    internal static (ImmutableArray<Explanation.Reason> Shown, ImmutableArray<string> Tiny) Parts(LessonStep step) =>
        ([.. step.Parts.Where(part => Rounding.Printed(part.Points, 1) != 0)], [.. step.Parts.Where(part => Rounding.Printed(part.Points, 1) == 0).Select(part => part.Name)]);
}
