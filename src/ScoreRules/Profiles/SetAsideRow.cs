using ScoreRules.Catalogue;

namespace ScoreRules.Profiles;

/// <summary>A movement that a profile sets aside: it keeps its score and its tier, it is only not offered.</summary>
/// <param name="Row">The movement and the target.</param>
/// <param name="Kind">Why.</param>
/// <param name="Detail">The kit that is missing, or the demand that it meets, in the author's words.</param>
public sealed record SetAsideRow(PlacementRow Row, SetAsideKind Kind, string Detail);
