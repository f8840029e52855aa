using System.Collections.Immutable;

namespace ScoreRules.Guarding.Breaking;

/// <summary>A set of pins that notices all breakages that nothing noticed.</summary>
/// <param name="Pins">The pins, by target, then by movement.</param>
/// <param name="IsSmallest">Whether it is proved that no smaller set of such pins would do; else it is the best that was found.</param>
/// <param name="Greedy">How many pins the simple way (always the pin that notices most) would have taken.</param>
public sealed record PinChoice(ImmutableArray<Pin> Pins, bool IsSmallest, int Greedy)
{
    /// <summary>Nothing to notice.</summary>
    public static PinChoice None { get; } = new([], true, 0);
}
