using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.Kit;

/// <summary>What one list loses without some kit.</summary>
/// <param name="Target">The target.</param>
/// <param name="Before">The first three before.</param>
/// <param name="After">The first three after.</param>
/// <param name="Gone">What cannot be done any more, best first.</param>
public sealed record LossFinding(TargetDefinition Target, ImmutableArray<Placement> Before, ImmutableArray<Placement> After, ImmutableArray<Placement> Gone)
{
    /// <summary>Points by which the first choice falls; NaN when nothing is left.</summary>
    public double Loss => Before.IsEmpty ? 0 : After.IsEmpty ? double.NaN : Before[0].Score - After[0].Score;

    /// <summary>Whether one of the first three changes.</summary>
    public bool ShowsAtTheTop => !Before.Select(placement => placement.Row.Index).SequenceEqual(After.Select(placement => placement.Row.Index));
}
