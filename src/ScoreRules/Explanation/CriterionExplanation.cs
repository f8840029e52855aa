using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Explanation;

/// <summary>What one criterion gave a placement, and why.</summary>
/// <param name="Criterion">The criterion.</param>
/// <param name="Attribute">The attribute it read.</param>
/// <param name="Fact">The fact it found, with where that comes from.</param>
/// <param name="Weight">Its weight as written.</param>
/// <param name="Share">Its share of all weights in force, 0 to 1.</param>
/// <param name="Worth">What the fact was worth, 0 to 1.</param>
/// <param name="Points">Points it gave.</param>
public sealed record CriterionExplanation(
    CriterionDefinition Criterion,
    AttributeDefinition Attribute,
    CatalogueFact Fact,
    double Weight,
    double Share,
    double Worth,
    double Points)
{
    /// <summary>How its weight came about, when it was told by order or comparison; else null.</summary>
    public WeightBasis? Basis { get; init; }

    /// <summary>The benchmark's fact, or null without a benchmark.</summary>
    public CatalogueFact? BenchmarkFact { get; init; }

    /// <summary>
    /// Whether mechanics can tell the two apart: their intervals do not overlap, and lengths differ by a fifth of their range or more. Null
    /// where the fact is not derived, or one of the two is not known.
    /// </summary>
    public bool? IsApart { get; init; }

    /// <summary>Points it gave the benchmark; NaN without one.</summary>
    public double BenchmarkPoints { get; init; } = double.NaN;

    /// <summary>Whether the fact was unknown, so that the declared worth of an unknown value was used.</summary>
    public bool IsUnknown => !Fact.Value.IsKnown;

    /// <summary>Points more (or, negative, less) than the benchmark got; NaN without one.</summary>
    public double Difference => Points - BenchmarkPoints;
}
