using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>Load and lengths over the lifting phase, at evenly spaced angles.</summary>
/// <param name="Angle">Angle of the working joint, degrees.</param>
/// <param name="Moment">Moment about it, N m, negative where the load helps; null when it cannot be worked out.</param>
/// <param name="Length">Practical length, 0 to 1, by muscle.</param>
/// <param name="LongThird">first or last: the third in which the greater part of the target is long.</param>
public sealed record CurvePart(ImmutableArray<double> Angle, ImmutableArray<double>? Moment, IReadOnlyDictionary<string, ImmutableArray<double>> Length, string LongThird);
