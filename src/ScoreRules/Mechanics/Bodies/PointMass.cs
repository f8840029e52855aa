namespace ScoreRules.Mechanics.Bodies;

/// <summary>Several segments taken as one mass on a line.</summary>
/// <param name="Kilograms">Mass, kg.</param>
/// <param name="Metres">Distance of the centre from where the line begins, m.</param>
public readonly record struct PointMass(double Kilograms, double Metres)
{
    /// <summary>Two masses on the same line as one: centre = sum of m s / sum of m.</summary>
    public static PointMass operator +(PointMass left, PointMass right) =>
        left.Kilograms + right.Kilograms is > 0 and var mass
            ? new(mass, ((left.Kilograms * left.Metres) + (right.Kilograms * right.Metres)) / mass)
            : default;
}
