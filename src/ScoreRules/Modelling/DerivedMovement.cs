using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Mechanics.Facts;

namespace ScoreRules.Modelling;

/// <summary>What mechanics derives for a movement and a target, or why it cannot.</summary>
/// <param name="Movement">The movement.</param>
/// <param name="Target">The target.</param>
/// <param name="Facts">The facts; null when too little is stated.</param>
/// <param name="Lacks">What the movement would have to state first, in words.</param>
/// <param name="CoveredShare">Share of the target whose muscles are known well enough, 0 to 1; 0 when nothing is said about lengths.</param>
public sealed record DerivedMovement(Movement Movement, TargetDefinition Target, MovementFacts? Facts, ImmutableArray<string> Lacks, double CoveredShare)
{
    /// <summary>A fact by its name; null when there are none.</summary>
    public Mechanics.Facts.FactValue? Find(string name) => Facts?.Values.FirstOrDefault(value => value.Fact.Name == name);
}
