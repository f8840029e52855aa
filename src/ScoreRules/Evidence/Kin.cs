using ScoreRules.Catalogue;

namespace ScoreRules.Evidence;

/// <summary>The two measures of how near movements are: the one that is told, and the one that is a correlation.</summary>
/// <param name="Likeness">What houses speak of and pages print.</param>
/// <param name="Kinship">What beliefs move together by; never more.</param>
internal sealed record Kin(Likeness Likeness, Kinship Kinship);
