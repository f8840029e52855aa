namespace ScoreRules.Choosing;

/// <summary>A limit that keeps a choice from being possible.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="Least">What it would have to be at least, in its own unit, while the others are kept; null where that is no number.</param>
public sealed record LimitInTheWay(ChoiceLimit Limit, double? Least);
