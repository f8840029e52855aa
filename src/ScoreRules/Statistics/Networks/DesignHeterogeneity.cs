namespace ScoreRules.Statistics.Networks;

/// <summary>How far studies of one design, the same set of treatments, disagree with one another.</summary>
/// <param name="Design">Its treatments in ordinal order with colons between.</param>
/// <param name="Q">Weighted sum of squares about the pooled result of the design.</param>
/// <param name="Degrees">(studies - 1) (arms - 1); 0 for a single study.</param>
public sealed record DesignHeterogeneity(string Design, double Q, int Degrees);
