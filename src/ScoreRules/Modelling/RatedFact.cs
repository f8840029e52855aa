using System.Collections.Immutable;
using ScoreRules.Mechanics.Statics.Loads;

namespace ScoreRules.Modelling;

/// <summary>An attribute that is rated by eye and the fact of mechanics that says the same, with the value points that join them.</summary>
/// <param name="Attribute">The rated attribute, such as "stretch".</param>
/// <param name="Fact">The derived fact.</param>
/// <param name="Worth">Part of the rating scale (0 to 1) by derived value; straight between, flat outside.</param>
public sealed record RatedFact(string Attribute, string Fact, PiecewiseLinear Worth)
{
    /// <summary>Steps of a scale 0 to 4 from which a rating and mechanics are said to differ.</summary>
    public const double Apart = 1.5;

    /// <summary>The pairs. Value points: chosen with the model's design, an assumption that no study gives.</summary>
    public static ImmutableArray<RatedFact> All { get; } =
    [
        new("long tension", "loaded length in the long third", new PiecewiseLinear([(0.10, 0), (0.35, 0.25), (0.55, 0.5), (0.72, 0.75), (0.90, 1)])),
        new("stretch", "longest length under load", new PiecewiseLinear([(0.40, 0), (0.60, 0.25), (0.75, 0.5), (0.87, 0.75), (0.98, 1)])),
    ];
}
