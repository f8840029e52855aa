using System.Collections.Immutable;

namespace ScoreRules.Choosing;

/// <summary>A sum that may not be passed.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Name">The author's words.</param>
/// <param name="Amounts">The amount of each candidate, in thousandths of the unit, rounded up.</param>
/// <param name="Most">The most, in thousandths of the unit, rounded down.</param>
public sealed record AtMostLimit(ChoiceLimitKind Kind, string Name, ImmutableArray<long> Amounts, long Most) : ChoiceLimit(Kind, Name)
{
    /// <summary>How many parts a unit is divided into, because the solver counts in whole numbers.</summary>
    public const int Scale = 1000;

    /// <inheritdoc/>
    public override bool Allows(IReadOnlyCollection<int> chosen) => chosen.Sum(candidate => Amounts[candidate]) <= Most;
}
