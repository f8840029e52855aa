namespace ScoreRules.Publishing.Json;

/// <summary>Whose body mechanics assumes.</summary>
/// <param name="Kilograms">Body mass, kg.</param>
/// <param name="Metres">Standing height, m.</param>
/// <param name="Sex">male or female: whose segment constants are used.</param>
/// <param name="Origin">stated or assumed.</param>
public sealed record PersonPart(double Kilograms, double Metres, string Sex, string Origin);
