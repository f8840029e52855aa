namespace ScoreRules.Mechanics.Statics;

/// <summary>Something nobody stated.</summary>
/// <param name="Name">What, in words.</param>
/// <param name="Gain">What stating it would give, as a sentence.</param>
/// <param name="StopsTheCurve">Whether there is no curve without it.</param>
public sealed record MissingInput(string Name, string Gain, bool StopsTheCurve);
