using ScoreRules.Tiering;

namespace ScoreRules.Answers.NewStudy;

/// <summary>The nearest result of a new study that turns something.</summary>
/// <param name="Kind">What it turns.</param>
/// <param name="Difference">Points by which the study finds the first better; negative where it finds the second better. Rounded to a tenth on the side where it turns.</param>
/// <param name="IsUpward">Whether that difference or more turns it; else that difference or less.</param>
/// <param name="First">The first movement with such a study.</param>
/// <param name="Second">The second movement with such a study.</param>
public sealed record StudyTurn(StudyEffectKind Kind, double Difference, bool IsUpward, Placement First, Placement Second);
