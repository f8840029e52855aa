using ScoreRules.Certainty;

namespace ScoreRules.Publishing.Editions;

/// <summary>What is wanted of an edition.</summary>
/// <param name="Page">Makes the web page of a judgement and how sure it is; null for an edition without one.</param>
public sealed record EditionRequest(Func<Judgement, HouseCertainty, string>? Page)
{
    /// <summary>The day, when whoever publishes names one; null for the house's own.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>The name chosen for it; null for that of the house and its version.</summary>
    public string? Name { get; init; }
}
