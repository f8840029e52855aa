namespace ScoreRules.Publishing.Json;

/// <summary>What a criterion read and gave.</summary>
/// <param name="Name">The criterion.</param>
/// <param name="Attribute">The attribute it read.</param>
/// <param name="Value">The value found, in words.</param>
/// <param name="Origin">Where the fact comes from.</param>
/// <param name="FactFile">File that states the fact.</param>
/// <param name="FactLine">Line that states the fact.</param>
/// <param name="ClearOrder">Whether mechanics can tell it from the benchmark; null where the fact is not derived or not known.</param>
/// <param name="Weight">Weight as written.</param>
/// <param name="WeightBasis">Where a weight that no number states comes from; null for one that a number states.</param>
/// <param name="Worth">Worth of the value, 0 to 1.</param>
/// <param name="Points">Points given.</param>
/// <param name="Rule">The statement.</param>
public sealed record CriterionPart(
    string Name,
    string Attribute,
    string Value,
    string Origin,
    string? FactFile,
    int? FactLine,
    bool? ClearOrder,
    double Weight,
    string? WeightBasis,
    double Worth,
    double Points,
    RulePart Rule);
