namespace ScoreRules.Mechanics.Statics;

/// <summary>A number that went into a curve.</summary>
/// <param name="Name">What it is, in words.</param>
/// <param name="Value">The number.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Origin">Where it came from.</param>
public sealed record InputUse(string Name, double Value, string Unit, InputOrigin Origin);
