using ScoreRules.Language.Binding;

namespace ScoreRules.Evidence;

/// <summary>A study that moves nothing, and why.</summary>
/// <param name="Study">The study.</param>
/// <param name="Reason">Why.</param>
public sealed record NotCounted(StudyDefinition Study, NotCountedReason Reason);
