using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.Firmness;

/// <summary>The one weight that, changed alone, would put two movements level in points: a hair more, and they change places.</summary>
/// <param name="Criterion">The criterion.</param>
/// <param name="Weight">Its weight in the target, as written.</param>
/// <param name="Level">The weight at which both have the same points, the others unchanged.</param>
/// <param name="Parts">By how many parts of 100 it changes: -100 (S + a) / (100 d + a), with S the points by which criteria, a the points by which awards put the upper one ahead, d the difference of worths.</param>
/// <param name="IsConfirmed">Whether judging again a hair before and a hair beyond found the points in the one order and in the other.</param>
/// <param name="ChangesPlaces">Whether their places change too, a hair beyond; limits and judgements may keep them.</param>
public sealed record SwapFinding(CriterionDefinition Criterion, double Weight, double Level, double Parts, bool IsConfirmed, bool ChangesPlaces);
