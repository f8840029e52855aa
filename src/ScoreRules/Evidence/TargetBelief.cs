using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Statistics.Beliefs;

namespace ScoreRules.Evidence;

/// <summary>
/// Beliefs about the tested movements of a target and their cousins. Every score has the one doubt that the house states, so that a study
/// never speaks against the side that it favours. Movements move together as far as they are akin, within groups that hang together by
/// steps of the likeness that the house asks for; between groups not at all, so that the whole stays one table of correlations.
/// </summary>
internal sealed class TargetBelief
{
    private readonly ImmutableArray<StudyClaim> claims;
    private readonly ImmutableArray<int> owners;
    private readonly BeliefUpdate update;

    private TargetBelief(ImmutableArray<int> places, ImmutableArray<StudyClaim> claims, ImmutableArray<int> owners, BeliefUpdate update)
    {
        Places = places;
        this.claims = claims;
        this.owners = owners;
        this.update = update;
        Posterior = update.Posterior();
    }

    /// <summary>The movements that take part, by their place among the rows, rising.</summary>
    public ImmutableArray<int> Places { get; }

    /// <summary>The beliefs after studies, by position in <see cref="Places"/>.</summary>
    public ScoreBeliefs Posterior { get; }

    /// <summary>The orders that are kept; null when none is.</summary>
    public HeldOrders? Orders { get; set; }

    /// <summary>The update, for draws.</summary>
    public BeliefUpdate Update => update;

    /// <summary>Weighs claims.</summary>
    /// <param name="evidence">How the house weighs studies.</param>
    /// <param name="claims">What the studies say; at least one.</param>
    /// <param name="means">The scores before them, by row.</param>
    /// <param name="kin">The groups and how akin their members are.</param>
    /// <param name="benchmark">The row that is to keep its score, or null.</param>
    public static TargetBelief Of(EvidenceDefinition evidence, ImmutableArray<StudyClaim> claims, IReadOnlyList<double> means, KinGroups kin, int? benchmark)
    {
        var places = kin.Places;
        var fixedAt = benchmark is { } row ? places.IndexOf(row) : -1;
        var sd = evidence.PrinciplesMayBeOff!.Value;
        var prior = fixedAt < 0
            ? ScorePrior.Of([.. places.Select(place => means[place])], [.. places.Select(_ => sd)], kin.Of)
            : Knowing(fixedAt, [.. places.Select(place => means[place])], sd, kin);
        var (observations, owners) = (ImmutableArray.CreateBuilder<Observation>(), ImmutableArray.CreateBuilder<int>());
        for (var claim = 0; claim < claims.Length; claim++)
        {
            foreach (var observation in Observations(claims[claim], places))
            {
                observations.Add(observation);
                owners.Add(claim);
            }
        }

        return new TargetBelief(places, claims, owners.ToImmutable(), BeliefUpdate.Of(prior, observations.ToImmutable()));
    }

    /// <summary>How many points a claim moved a movement.</summary>
    /// <param name="claim">The claim.</param>
    /// <param name="position">Position in <see cref="Places"/>.</param>
    public double Pull(int claim, int position) => Enumerable.Range(0, owners.Length).Where(i => owners[i] == claim).Sum(i => Posterior.Pull(i, position));

    /// <summary>How a claim stands against the beliefs before all studies: its largest conflict.</summary>
    public PriorConflict Conflict(int claim)
    {
        var conflicts = Enumerable.Range(0, owners.Length).Where(i => owners[i] == claim).Select(i => PriorConflict.Of(update.Prior, update.Observations[i])).ToList();
        return claims[claim].Sense == StudySense.Measured ? conflicts[0] : conflicts.MaxBy(conflict => conflict.Z)!;
    }

    private static IEnumerable<Observation> Observations(StudyClaim claim, ImmutableArray<int> places)
    {
        ScoreTerm[] forward = [.. claim.Terms.Select(term => new ScoreTerm(places.IndexOf(term.Score), term.Factor))];
        ScoreTerm[] back = [.. forward.Select(term => new ScoreTerm(term.Score, -term.Factor))];
        var variance = claim.Deviation * claim.Deviation;
        if (claim.Sense == StudySense.Measured)
        {
            yield return Observation.OfTerms(ObservationKind.Measured, forward, claim.Low, variance);
            yield break;
        }

        if (double.IsFinite(claim.Low))
        {
            yield return Observation.OfTerms(ObservationKind.AtLeast, forward, claim.Low, variance);
        }

        if (double.IsFinite(claim.High))
        {
            yield return Observation.OfTerms(ObservationKind.AtLeast, back, -claim.High, variance);
        }
    }

    // The beliefs of somebody who knows one score: what is left of doubt and likeness once it is given (a normal distribution's conditional).
    private static ScorePrior Knowing(int known, double[] means, double sd, KinGroups kin)
    {
        const double Trace = 1e-6;
        double Left(int i) => i == known ? Trace : Math.Max(Trace, 1 - (kin.Of(i, known) * kin.Of(i, known)));
        return ScorePrior.Of(
            means,
            [.. Enumerable.Range(0, means.Length).Select(i => sd * Math.Sqrt(Left(i)))],
            (i, j) => i == known || j == known ? 0 : Math.Clamp((kin.Of(i, j) - (kin.Of(i, known) * kin.Of(j, known))) / Math.Sqrt(Left(i) * Left(j)), -1, 1));
    }
}
