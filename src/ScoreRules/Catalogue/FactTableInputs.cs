using System.Collections.Immutable;

namespace ScoreRules.Catalogue;

/// <summary>Facts that do not come from the catalogue.</summary>
/// <param name="Audience">Codes of the attribute about the person; empty means a known empty set.</param>
/// <param name="Likeness">Likeness to the benchmark in % by row, NaN where unknown; null when it is not used.</param>
public sealed record FactTableInputs(ImmutableArray<int> Audience, double[]? Likeness);
