namespace ScoreRules.Mechanics.Statics.Methods;

/// <summary>Moments that oppose the target at one instant, N m.</summary>
/// <param name="Load">From what is lifted.</param>
/// <param name="Body">From body weight through a support.</param>
/// <param name="Limb">From segments.</param>
internal readonly record struct MomentParts(double Load, double Body, double Limb);
