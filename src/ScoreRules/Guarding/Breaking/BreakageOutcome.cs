using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding.Breaking;

/// <summary>What became of one breakage.</summary>
/// <param name="Breakage">The breakage.</param>
/// <param name="Effect">What it did.</param>
/// <param name="Moved">The placements that moved, by target, then by movement.</param>
/// <param name="NoticedBy">The expectations that fail now and held before, in the order of the house.</param>
public sealed record BreakageOutcome(Breakage Breakage, BreakageEffect Effect, ImmutableArray<MovedRow> Moved, ImmutableArray<ExpectationDefinition> NoticedBy);
