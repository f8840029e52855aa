namespace ScoreRules.Publishing.Json;

/// <summary>A rating beside the derived value for the same thing.</summary>
/// <param name="Attribute">What is rated.</param>
/// <param name="Rated">The rating, in steps of its scale.</param>
/// <param name="Fact">The derived fact.</param>
/// <param name="Derived">The derived value in steps of the same scale.</param>
/// <param name="IsApart">Whether they are so far apart that somebody should look again.</param>
/// <param name="Path">File that states the rating.</param>
/// <param name="Line">Line that states it.</param>
public sealed record RatedPart(string Attribute, double Rated, string Fact, double Derived, bool IsApart, string? Path, int? Line);
