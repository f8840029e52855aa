using System.Collections.Immutable;

namespace ScoreRules.Language.Binding;

/// <summary>What each value of an attribute is worth, 0 to 1.</summary>
/// <param name="IsStep">Whether worth stays the same from one point to the next, instead of following a straight line.</param>
/// <param name="Points">For numbers: points by rising value.</param>
/// <param name="ByCode">For words: worth by code; NaN where the author said nothing.</param>
public sealed record WorthFunction(bool IsStep, ImmutableArray<(double At, double Worth)> Points, ImmutableArray<double> ByCode);
