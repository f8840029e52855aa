using System.Collections.Immutable;
using ScoreRules.Mechanics.Statics.Strains;

namespace ScoreRules.Mechanics.Facts;

/// <summary>
/// The table of facts. Each holds for one movement and one target; facts of muscles are means over the target's muscles by share, of those
/// that cross the working joint. "Long third" is the third of the movement's own range at the end where the muscle is longer.
/// </summary>
public static class DerivedFacts
{
    /// <summary>All facts, in the order in which they are shown.</summary>
    public static ImmutableArray<DerivedFact> All { get; } =
    [
        new("peak moment", "N m", 0, null, "How much the target has to hold at the hardest point, one side.", "highest M; a parabola through the three highest of 61 steps", FactBasis.Moments) { Compute = at => at.Peak?.Moment },
        new("angle of peak moment", "°", -180, 180, "The angle of the working joint at which it is hardest.", "angle of the highest M", FactBasis.Moments) { Compute = at => at.Peak?.AngleDegrees },
        new("loaded length in the long third", "", 0, 1, "How long and how loaded the target is where it is longest: tension when lengthened.", "mean of M / peak x L over the long third", FactBasis.ShapeAndLengths) { Compute = at => at.OfLoaded((muscle, load) => muscle.LoadedLength(load)) },
        new("longest length under load", "", 0, 1, "The longest the target gets while it still has to hold at least half of the peak: stretch.", "highest L where M is at least half the peak", FactBasis.ShapeAndLengths) { Compute = at => at.OfLoaded((muscle, load) => muscle.LongestUnderLoad(load)) },
        new("load profile", "", 0, 1, "How much of the hardest load is there where the target is long.", "mean M over the long third / peak", FactBasis.Shape) { IsOfLongThird = true, Compute = at => at.OfLoaded((muscle, load) => muscle.LoadProfile(load)) },
        new("moment-weighted length", "", 0, 1, "How long the target is where the work is done.", "sum of M x L / sum of M", FactBasis.ShapeAndLengths) { Compute = at => at.OfLoaded((muscle, load) => muscle.MomentWeightedLength(load)) },
        new("mean length", "", 0, 1, "How long the target is over the whole range.", "mean L", FactBasis.Lengths) { Compute = at => at.OfLengths(muscle => muscle.MeanLength) },
        new("longest length", "", 0, 1, "The longest the target gets.", "highest L", FactBasis.Lengths) { Compute = at => at.OfLengths(muscle => muscle.Longest) },
        new("length excursion", "", 0, 1, "How much of its range of length the target goes through.", "highest L - lowest L", FactBasis.Lengths) { Compute = at => at.OfLengths(muscle => muscle.Excursion) },
        new("share of load in the lengthened third", "", 0, 1, "How much of all the load falls in the third where the target is long; a third is even.", "M summed over the long third / M summed over the range", FactBasis.Shape) { IsOfLongThird = true, Compute = at => at.OfLoaded((muscle, load) => muscle.ShareOfLoad(load)) },
        new("load at the longest point", "", 0, 1, "How much of the hardest load is there at the very point where the target is longest; easily moved by a pulley.", "M at the highest L / peak", FactBasis.Shape) { IsOfLongThird = true, Compute = at => at.OfLoaded((muscle, load) => muscle.LoadAtLongest(load)) },
        new("part of the range where the load helps", "", 0, 1, "Where the load moves the joint for the target instead of against it.", "angle over which the moment is below 0 / range", FactBasis.Shape) { Compute = at => at.Helping },
        new("evenness of load", "", 0, 1, "1 is the same load at every angle.", "mean M / peak", FactBasis.Shape) { Compute = at => at.Evenness },
        new("wrist moment", "N m", 0, null, "The most the wrist has to hold.", "highest moment of grip force and hand about the wrist", FactBasis.Strain) { Compute = at => WristStrain.Peak(at.Mechanism) },
        new("forced forearm rotation", "°", 0, 180, "How far a handle that cannot turn forces the forearm past what it turns freely.", "rotation the handle asks for - 80°", FactBasis.Strain) { Compute = at => ForearmStrain.Of(at.Mechanism)?.BeyondDegrees },
        new("spine moment", "N m", 0, null, "The most the lower back has to hold; 0 with the trunk on a pad.", "highest moment about the last lumbar disc", FactBasis.Strain) { Compute = at => SpineStrain.Peak(at.Mechanism) },
        new("working sides", "", 1, 2, "1 when one side works at a time, so that the trunk must not turn.", "as the movement states it", FactBasis.Support) { Compute = at => at.Support is { } support ? support.IsOneSided ? 1 : 2 : null },
        new("support points", "", 0, null, "How many places hold the body.", "different places the movement states", FactBasis.Support) { Compute = at => at.Support?.SupportPoints },
    ];

    /// <summary>A fact by its name.</summary>
    /// <param name="name">Such as "mean length".</param>
    /// <returns>None when there is none of that name.</returns>
    public static DerivedFact? Find(string name) => All.FirstOrDefault(fact => fact.Name == name);
}
