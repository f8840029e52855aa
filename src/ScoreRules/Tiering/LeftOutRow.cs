using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Tiering;

/// <summary>A movement that is not ranked, with the rule that leaves it out. It keeps its score.</summary>
/// <param name="Row">The movement and the target.</param>
/// <param name="Score">The score it keeps.</param>
/// <param name="Rules">The rules that leave it out, in source order.</param>
public sealed record LeftOutRow(PlacementRow Row, double Score, ImmutableArray<ExclusionDefinition> Rules);
