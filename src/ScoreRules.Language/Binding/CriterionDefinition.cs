using System.Collections.Immutable;

namespace ScoreRules.Language.Binding;

/// <summary>Something that counts: what it reads, what that is worth, how much it weighs.</summary>
/// <param name="Info">What the statement says about itself; its name is the criterion's.</param>
/// <param name="Weights">Weights; of several the smallest target that fits wins. One without an amount counts by the statement <c>weights</c>.</param>
/// <param name="Readings">Attributes read; of several the smallest target that fits wins.</param>
/// <param name="Worth">What values are worth.</param>
/// <param name="UnknownWorth">Worth of an unknown value, 0 to 1; null when the author did not say.</param>
public sealed record CriterionDefinition(
    StatementInfo Info,
    ImmutableArray<CriterionWeight> Weights,
    ImmutableArray<CriterionReading> Readings,
    WorthFunction Worth,
    double? UnknownWorth) : BoundStatement(Info)
{
    /// <summary>Its name as declared.</summary>
    public string Name => Info.Name!;
}
