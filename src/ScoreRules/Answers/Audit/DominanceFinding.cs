using ScoreRules.Explanation;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.Audit;

/// <summary>A movement that is at least as good as another on every criterion and award, and yet stands below it.</summary>
/// <param name="Better">The movement that is at least as good.</param>
/// <param name="Above">The one that stands above it.</param>
/// <param name="Cause">The statement that did it: a limit or a judgement; null when none of these did.</param>
/// <param name="IsByStudies">Whether studies moved one of the two.</param>
public sealed record DominanceFinding(PlacementExplanation Better, PlacementExplanation Above, BoundStatement? Cause, bool IsByStudies);
