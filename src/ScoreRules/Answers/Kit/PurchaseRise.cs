using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.Kit;

/// <summary>How a purchase changes the first choice of one list.</summary>
/// <param name="Target">The target.</param>
/// <param name="Before">The first choice before; null when there is none.</param>
/// <param name="After">The first choice with what is bought.</param>
public sealed record PurchaseRise(TargetDefinition Target, Placement? Before, Placement After)
{
    /// <summary>Points by which the first choice rises; a list without any counts as 0 points.</summary>
    public double Points => After.Score - (Before?.Score ?? 0);
}
