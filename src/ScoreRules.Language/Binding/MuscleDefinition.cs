using System.Collections.Immutable;

namespace ScoreRules.Language.Binding;

/// <summary>A muscle or a part of one.</summary>
/// <param name="Info">What the statement says about itself; its name is the muscle's.</param>
/// <param name="Latin">Latin name (Terminologia Anatomica), or null.</param>
/// <param name="Crosses">Joints it crosses.</param>
public sealed record MuscleDefinition(StatementInfo Info, string? Latin, ImmutableArray<string> Crosses) : BoundStatement(Info);
