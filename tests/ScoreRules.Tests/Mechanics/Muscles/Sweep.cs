using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Tests.Mechanics.Muscles;

/// <summary>A part of a muscle while one joint moves and others are held; 61 evenly spaced angles, anatomical range.</summary>
internal sealed record Sweep(string Part, JointMotion Moving, double From, double To, params (JointMotion Motion, double Degrees)[] Held)
{
    private const int Steps = 61;

    /// <summary>Moment by angle, in any unit; what helps counts as none.</summary>
    public Func<double, double> Load { get; init; } = _ => 1;

    public double Mean => Weighted(_ => 1);

    public double Peak => Angles.Max(Length);

    public double MomentWeighted => Weighted(Load);

    private IEnumerable<double> Angles => Enumerable.Range(0, Steps).Select(step => From + ((To - From) * step / (Steps - 1)));

    private double Length(double angle) => ModelPart.Named(Part).LengthAt(ModelPart.Posture(Held).With(Moving, angle)).Normalised;

    private double Weighted(Func<double, double> load)
    {
        var rows = Angles.Select((angle, step) => (Length: Length(angle), Weight: Math.Max(0, load(angle)) * (step is 0 or Steps - 1 ? 0.5 : 1))).ToList();
        return rows.Sum(row => row.Length * row.Weight) / rows.Sum(row => row.Weight);
    }
}
