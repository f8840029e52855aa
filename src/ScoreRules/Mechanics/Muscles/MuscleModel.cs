using System.Collections.Frozen;
using System.Collections.Immutable;

namespace ScoreRules.Mechanics.Muscles;

/// <summary>
/// All muscles whose length is known: 57 parts in 32 muscles, from published models of one adult skeleton (sources and licences in
/// <c>Mechanics/Data/README.md</c>). Read once, when first asked for.
/// </summary>
/// <remarks>Subscapularis is left out: its line of pull jumps in the model. Muscles of the trunk, the neck and the forearm have no data.</remarks>
public static class MuscleModel
{
    private static readonly Lazy<FrozenDictionary<string, MusclePart>> PartsByName = new(() => MuscleReader.Parts().ToFrozenDictionary(part => part.Name, StringComparer.Ordinal));

    private static readonly Lazy<ImmutableArray<Muscle>> Ordered = new(() => MuscleReader.Muscles(PartsByName.Value));

    private static readonly Lazy<FrozenDictionary<string, Muscle>> ByName = new(() => Ordered.Value.ToFrozenDictionary(muscle => muscle.Name, StringComparer.Ordinal));

    /// <summary>All muscles, in the order of the data.</summary>
    public static ImmutableArray<Muscle> Muscles => Ordered.Value;

    /// <summary>All parts, by name; more than the muscles use.</summary>
    public static ImmutableArray<MusclePart> Parts => [.. PartsByName.Value.Values.OrderBy(part => part.Name, StringComparer.Ordinal)];

    /// <summary>A muscle by its name in rules, such as <c>triceps long head</c>; none when its length is not known.</summary>
    public static Muscle? FindMuscle(string name) => ByName.Value.GetValueOrDefault(name);

    /// <summary>A part by its name in the data, such as <c>triceps long</c>; none when there is none.</summary>
    public static MusclePart? FindPart(string name) => PartsByName.Value.GetValueOrDefault(name);
}
