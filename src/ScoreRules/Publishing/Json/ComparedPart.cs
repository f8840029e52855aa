namespace ScoreRules.Publishing.Json;

/// <summary>What one criterion or award gave two movements.</summary>
/// <param name="Name">The criterion or award.</param>
/// <param name="First">Points it gave the first.</param>
/// <param name="Second">Points it gave the second.</param>
/// <param name="Apart">Points by which the first is ahead.</param>
public sealed record ComparedPart(string Name, double First, double Second, double Apart);
