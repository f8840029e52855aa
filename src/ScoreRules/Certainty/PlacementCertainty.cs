using System.Collections.Immutable;
using ScoreRules.Tiering;

namespace ScoreRules.Certainty;

/// <summary>Where a movement lands when everything that the authors admit may be otherwise is tried.</summary>
/// <param name="Placement">The placement as it is printed.</param>
/// <param name="Tiers">By tier, best first: the share of tries that land there; they sum to 1.</param>
/// <param name="Ranks">By rank, from the first: the share of tries; they sum to 1. Movements of equal standing share ranks.</param>
/// <param name="Low">The gap to the benchmark (the score, without one) that 1 try in 10 falls below, in points.</param>
/// <param name="High">The gap that 1 try in 10 exceeds.</param>
public sealed record PlacementCertainty(Placement Placement, ImmutableArray<double> Tiers, ImmutableArray<double> Ranks, double Low, double High)
{
    /// <summary>The share of tries that land in the printed tier.</summary>
    public double Here => Tiers[Placement.Tier.Index];

    /// <summary>The share that land in better tiers.</summary>
    public double Higher => Tiers.Take(Placement.Tier.Index).Sum();

    /// <summary>The share that land in worse tiers.</summary>
    public double Lower => Tiers.Skip(Placement.Tier.Index + 1).Sum();

    /// <summary>The tier in which most tries land; the printed one when it is level with another.</summary>
    public int Likeliest => Tiers.Max() <= Here ? Placement.Tier.Index : Tiers.IndexOf(Tiers.Max());
}
