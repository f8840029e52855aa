namespace ScoreRules.Mechanics.Bodies;

/// <summary>The person a movement is worked out for. Shapes of curves hardly depend on it, newton metres do.</summary>
/// <param name="MassKilograms">Body mass, kg, above 0.</param>
/// <param name="StatureMetres">Standing height, m, above 0.</param>
/// <param name="Sex">Whose segment constants are used.</param>
public sealed record Person(double MassKilograms, double StatureMetres, Sex Sex)
{
    /// <summary>Who is meant when nobody is stated: 80 kg, 1.80 m, male constants. A convention of the reference numbers, not a norm.</summary>
    public static Person Default { get; } = new(80, 1.80, Sex.Male);
}
