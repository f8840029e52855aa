using System.Collections.Immutable;
using ScoreRules.Mechanics.Facts.Workings;
using ScoreRules.Mechanics.Muscles;
using ScoreRules.Mechanics.Statics;
using ScoreRules.Mechanics.Statics.Curves;

namespace ScoreRules.Mechanics.Facts;

/// <summary>What mechanics says about one movement for one target.</summary>
/// <param name="Profile">The moments and what they rest on.</param>
/// <param name="Target">The muscles used: those of the target that cross the working joint.</param>
/// <param name="LeftOut">Muscles of the target that do not cross the working joint, so that its moment does not load them.</param>
/// <param name="Values">One for each of <see cref="DerivedFacts.All"/>, in that order.</param>
/// <param name="Helping">Where the load helps instead of opposing.</param>
/// <param name="Worst">The angle furthest outside of what is known of the muscles, over the range.</param>
/// <param name="OffSagittalDegrees">For muscles known in the sagittal plane only: how far the upper arm is from it at most.</param>
/// <param name="Variations">How many times one input was changed for the intervals.</param>
/// <param name="FailedVariations">How many of those gave no curve and so are not in the intervals, though the movement itself has one.</param>
public sealed record MovementFacts(
    MomentProfile Profile,
    MuscleTarget Target,
    ImmutableArray<string> LeftOut,
    ImmutableArray<FactValue> Values,
    ImmutableArray<AngleSpan> Helping,
    Excess Worst,
    double OffSagittalDegrees,
    int Variations,
    int FailedVariations)
{
    /// <summary>A fact by its name.</summary>
    /// <param name="name">One of the names of <see cref="DerivedFacts.All"/>.</param>
    /// <exception cref="KeyNotFoundException">There is no fact of that name.</exception>
    public FactValue this[string name] => Values.FirstOrDefault(value => value.Fact.Name == name) ?? throw new KeyNotFoundException($"There is no fact \"{name}\".");

    /// <summary>Works out all facts. Never throws for numbers of a mechanism: what cannot be worked out is missing and says why.</summary>
    /// <param name="mechanism">The movement.</param>
    /// <param name="target">The muscles with their shares.</param>
    /// <param name="options">How; null for <see cref="FactOptions.Default"/>.</param>
    public static MovementFacts Of(Mechanism mechanism, MuscleTarget target, FactOptions? options = null) =>
        FactFinding.Find(mechanism, target, options ?? FactOptions.Default);
}
