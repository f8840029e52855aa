namespace ScoreRules.Report.Views;

/// <summary>One rank in the picture of where tries land.</summary>
/// <param name="Rank">The rank, from 1.</param>
/// <param name="Share">The share of tries that land there.</param>
/// <param name="IsPrinted">Whether it is the rank that the page prints.</param>
public sealed record RankColumn(int Rank, double Share, bool IsPrinted);
