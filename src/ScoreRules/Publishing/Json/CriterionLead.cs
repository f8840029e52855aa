namespace ScoreRules.Publishing.Json;

/// <summary>A criterion's points of one side less those of the other.</summary>
/// <param name="Criterion">The criterion.</param>
/// <param name="Lead">The difference in points.</param>
public sealed record CriterionLead(string Criterion, double Lead);
