namespace ScoreRules.Publishing.Json;

/// <summary>A movement that a profile sets aside.</summary>
/// <param name="Movement">Its name.</param>
/// <param name="Why">kit, sore joint, or avoid.</param>
/// <param name="Detail">The kit that is missing, the joint, or the demand that it meets.</param>
public sealed record SetAsidePart(string Movement, string Why, string Detail);
