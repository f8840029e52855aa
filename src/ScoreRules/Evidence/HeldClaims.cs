using System.Collections.Immutable;
using ScoreRules.Language;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Statistics;
using ScoreRules.Statistics.Beliefs;

namespace ScoreRules.Evidence;

/// <summary>
/// Keeps the orders of studies that are to decide, by the smallest move that does: what was found with its word keeps that lead, what was
/// measured keeps the order alone. Orders that go round in a circle, or that cannot hold together, are let go and reported.
/// </summary>
/// <param name="findings">Where circles are reported.</param>
internal sealed class HeldClaims(DiagnosticBag findings)
{
    /// <summary>Moves scores in place.</summary>
    /// <param name="claims">All claims of the target.</param>
    /// <param name="belief">The beliefs after studies.</param>
    /// <param name="scores">Scores by position.</param>
    /// <returns>By claim and position, the points moved; empty for claims that hold nothing.</returns>
    public ImmutableDictionary<int, double[]> Apply(ImmutableArray<StudyClaim> claims, TargetBelief belief, double[] scores)
    {
        var deciding = Enumerable.Range(0, claims.Length).Select(claim => (Claim: claim, Order: OrderOf(claims[claim], belief.Places))).Where(pair => pair.Order is not null)
            .Select(pair => (pair.Claim, Order: pair.Order!.Value)).ToList();
        Release(deciding, claims);
        if (deciding.Count == 0)
        {
            return ImmutableDictionary<int, double[]>.Empty;
        }

        var orders = HeldOrders.Of(scores.Length, belief.Posterior.Covariance, [.. deciding.Select(pair => pair.Order)]);
        return Move(orders, deciding, claims, belief, scores);
    }

    private ImmutableDictionary<int, double[]> Move(HeldOrders orders, List<(int Claim, HeldOrder Order)> deciding, ImmutableArray<StudyClaim> claims, TargetBelief belief, double[] scores)
    {
        try
        {
            var multipliers = orders.Apply(scores);
            belief.Orders = orders;
            return Enumerable.Range(0, deciding.Count).ToImmutableDictionary(i => deciding[i].Claim, i => Enumerable.Range(0, scores.Length).Select(place => orders.Pull(multipliers, i, place)).ToArray());
        }
        catch (StatisticsInputException)
        {
            findings.Add(Contradiction("The orders that these studies are to keep cannot hold together", [.. deciding.Select(pair => claims[pair.Claim])]));
            return ImmutableDictionary<int, double[]>.Empty;
        }
    }

    // Only a pair of movements has an order; "about the same" decides none.
    private static HeldOrder? OrderOf(StudyClaim claim, ImmutableArray<int> places)
    {
        if (claim.Study.Strength != StudyStrength.Decide || claim.Terms.Length != 2 || claim.Sense == StudySense.Within || claim.IsSplit)
        {
            return null;
        }

        var (first, second) = (places.IndexOf(claim.Terms[0].Score), places.IndexOf(claim.Terms[1].Score));
        var margin = claim.Sense == StudySense.Measured ? 0 : Math.Max(claim.Low, -claim.High);
        return margin < 0 ? null : claim.Direction > 0 ? new HeldOrder(first, second, margin) : new HeldOrder(second, first, margin);
    }

    private void Release(List<(int Claim, HeldOrder Order)> deciding, ImmutableArray<StudyClaim> claims)
    {
        foreach (var cycle in OrderCycles.Find([.. deciding.Select(pair => pair.Order)]))
        {
            var steps = cycle.Select((place, i) => (Above: place, Below: cycle[(i + 1) % cycle.Count])).ToHashSet();
            var round = deciding.FindAll(pair => steps.Contains((pair.Order.Above, pair.Order.Below)));
            findings.Add(Contradiction("These studies are to decide, and their orders go round in a circle", [.. round.Select(pair => claims[pair.Claim])]));
            deciding.RemoveAll(pair => steps.Contains((pair.Order.Above, pair.Order.Below)));
        }
    }

    private static Diagnostic Contradiction(string headline, ImmutableArray<StudyClaim> claims)
    {
        var places = claims.Select(claim => (claim.Study, claim.Lines[0].Location)).OrderBy(pair => pair.Location, Comparer<Language.Text.SourceLocation>.Create(Language.Text.SourceLocation.Compare)).ToList();
        return new Diagnostic("SR6010", Severity.Warning, headline, new Label(places[0].Location, $"study {places[0].Study.Name}"))
        {
            Others = [.. places.Skip(1).Select(pair => new Label(pair.Location, $"study {pair.Study.Name}"))],
            Notes = ["none of these orders is kept; the studies are weighed only"],
            Suggestions = [new Suggestion("write \"weigh it\" in the study that you trust least")],
        };
    }
}
