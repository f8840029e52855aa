namespace ScoreRules.Mechanics.Bodies;

/// <summary>A segment of one person.</summary>
/// <param name="Kilograms">Mass, kg.</param>
/// <param name="Metres">Length between the joints, m.</param>
/// <param name="CentreMetres">Centre of mass from the upper end, m.</param>
public readonly record struct SegmentSize(double Kilograms, double Metres, double CentreMetres);
