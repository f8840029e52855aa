using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>The attribute a criterion reads, for some targets or (empty) for all.</summary>
/// <param name="Attribute">The attribute.</param>
/// <param name="Targets">Targets it is for; empty for all.</param>
/// <param name="Location">Where it stands.</param>
public sealed record CriterionReading(AttributeDefinition Attribute, ImmutableArray<TargetDefinition> Targets, SourceLocation Location);
