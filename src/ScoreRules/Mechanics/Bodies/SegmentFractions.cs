namespace ScoreRules.Mechanics.Bodies;

/// <summary>A segment as fractions of the whole body.</summary>
/// <param name="Mass">Mass, fraction of body mass.</param>
/// <param name="Centre">Distance of the centre of mass from the upper end, fraction of <paramref name="CentreLength"/>.</param>
/// <param name="Length">Distance between the joints the model uses, fraction of stature (Drillis and Contini).</param>
/// <param name="CentreLength">The length the centre of mass refers to, fraction of stature; differs from <paramref name="Length"/> for head and hand.</param>
public readonly record struct SegmentFractions(double Mass, double Centre, double Length, double CentreLength);
