namespace ScoreRules.Publishing.Json;

/// <summary>One fact supposed to be different.</summary>
/// <param name="Attribute">What is different.</param>
/// <param name="From">The fact now, in words.</param>
/// <param name="To">The fact supposed, in words.</param>
/// <param name="GymCanChange">Whether a gym can arrange it.</param>
public sealed record SupposedPart(string Attribute, string From, string To, bool GymCanChange);
