using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Mechanics.Statics;

namespace ScoreRules.Modelling;

/// <summary>A movement seen as mechanics, for one target.</summary>
/// <param name="Movement">The movement.</param>
/// <param name="Target">The target; the working joint follows it.</param>
/// <param name="Mechanism">What mechanics asks, or null when something is missing.</param>
/// <param name="Lacks">What the movement would have to state first, in words.</param>
public sealed record MovementModel(Movement Movement, TargetDefinition Target, Mechanism? Mechanism, ImmutableArray<string> Lacks);
