using ScoreRules.Mechanics.Facts.Workings;

namespace ScoreRules.Mechanics.Facts;

/// <summary>A number that mechanics gives for a movement and a target.</summary>
/// <param name="Name">Plain name, as a rule may say it.</param>
/// <param name="Unit">Unit: "N m", "°" or none.</param>
/// <param name="Low">Smallest value it can take; none when there is none.</param>
/// <param name="High">Largest value it can take; none when there is none.</param>
/// <param name="Meaning">What it says, in a sentence for coaches.</param>
/// <param name="Formula">How it is worked out. M is the moment about the working joint where it opposes the target, else 0; L is practical length, 0 to 1.</param>
/// <param name="Basis">What it is made of.</param>
public sealed record DerivedFact(string Name, string Unit, double? Low, double? High, string Meaning, string Formula, FactBasis Basis)
{
    /// <summary>Whether it depends on which muscles the target has; then the least reliable of them grades it.</summary>
    public bool IsOfMuscles => Basis is FactBasis.Lengths or FactBasis.ShapeAndLengths || IsOfLongThird;

    /// <summary>Whether it depends on muscles only through the end at which they are longer.</summary>
    internal bool IsOfLongThird { get; init; }

    /// <summary>Works it out; none when what it needs is not there.</summary>
    internal Func<Working, double?> Compute { get; init; } = _ => null;
}
