using System.Collections.Immutable;
using ScoreRules.Mechanics.Facts;
using ScoreRules.Mechanics.Muscles;

namespace ScoreRules.Modelling;

/// <summary>The facts of one muscle of a target: those that depend on muscles.</summary>
/// <param name="Muscle">Its name.</param>
/// <param name="Share">Its share of the muscles that cross the working joint, 0 to 1.</param>
/// <param name="Values">The facts, in the order of <see cref="DerivedFacts.All"/>; without intervals.</param>
public sealed record MuscleFacts(string Muscle, double Share, ImmutableArray<FactValue> Values)
{
    /// <summary>The muscles of what is derived, in the order of the target.</summary>
    /// <param name="facts">The facts of the target as a whole.</param>
    /// <param name="acceptsEvenLoad">Whether the house accepts an even load where a cam is not recorded.</param>
    public static ImmutableArray<MuscleFacts> Of(MovementFacts facts, bool acceptsEvenLoad)
    {
        var options = new FactOptions { WithIntervals = false, AcceptsEvenLoad = acceptsEvenLoad };
        return [.. facts.Target.Muscles.Select((muscle, index) => new MuscleFacts(muscle.Name, facts.Target.Shares[index], Alone(facts, muscle.Name, options)))];
    }

    private static ImmutableArray<FactValue> Alone(MovementFacts facts, string muscle, FactOptions options) =>
        [.. MovementFacts.Of(facts.Profile.Mechanism, MuscleTarget.Of([KeyValuePair.Create(muscle, 1.0)]), options).Values.Where(value => value.Fact.IsOfMuscles)];
}
