using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Evidence;

/// <summary>Keeps account of what moves the movements of a target.</summary>
/// <param name="rows">The movements.</param>
/// <param name="principle">Their scores on principle.</param>
/// <param name="scores">Their scores as they move; judgements by another movement are in them.</param>
/// <param name="chain">Those judgements.</param>
/// <param name="claims">What studies say.</param>
internal sealed class Account(ImmutableArray<PlacementRow> rows, double[] principle, double[] scores, PlaceChain chain, ImmutableArray<StudyClaim> claims)
{
    private readonly List<StudyPull>[] pulls = [.. rows.Select(_ => new List<StudyPull>())];
    private readonly List<StudyPull>[] held = [.. rows.Select(_ => new List<StudyPull>())];

    /// <summary>The scores as they are now.</summary>
    public double[] Scores => scores;

    /// <summary>Enters what studies did.</summary>
    /// <param name="belief">The beliefs after them.</param>
    /// <param name="holding">Keeps the orders of those that decide.</param>
    public void Take(TargetBelief belief, HeldClaims holding)
    {
        double[] moved = [.. belief.Posterior.Means];
        var decided = holding.Apply(claims, belief, moved);
        for (var position = 0; position < moved.Length; position++)
        {
            var place = belief.Places[position];
            scores[place] = moved[position];
            for (var claim = 0; claim < claims.Length; claim++)
            {
                Enter(pulls[place], claim, place, belief.Pull(claim, position));
                Enter(held[place], claim, place, decided.TryGetValue(claim, out var points) ? points[position] : 0);
            }
        }
    }

    /// <summary>The result.</summary>
    /// <param name="target">The target.</param>
    /// <param name="belief">The beliefs; null when no study counts.</param>
    /// <param name="doubt">How far a score that nothing tested may be off.</param>
    public TargetEvidence Close(TargetDefinition target, TargetBelief? belief, double doubt) =>
        new(target, rows, [.. Enumerable.Range(0, rows.Length).Select(place => Close(place, belief, doubt))], claims)
        {
            Conflicts = belief is null ? [] : [.. Enumerable.Range(0, claims.Length).Select(belief.Conflict)],
            Belief = belief,
        };

    private RowEvidence Close(int place, TargetBelief? belief, double doubt)
    {
        var position = belief?.Places.IndexOf(place) ?? -1;
        var studies = pulls[place].Sum(pull => pull.Points) + held[place].Sum(pull => pull.Points);
        var judgement = chain.Of(place);
        return new RowEvidence(principle[place], scores[place])
        {
            Place = judgement,
            PlacePoints = judgement is null ? 0 : scores[place] - principle[place] - studies,
            Pulls = [.. pulls[place]],
            Held = [.. held[place]],
            Deviation = position < 0 ? doubt : Math.Sqrt(belief!.Posterior.Variance(position)),
            IsTested = claims.Any(claim => claim.Tests(place)),
        };
    }

    // What is smaller than any number that is compared is no pull.
    private void Enter(List<StudyPull> list, int claim, int place, double points)
    {
        if (Math.Abs(points) > 1e-9 || (list == pulls[place] && claims[claim].Tests(place)))
        {
            list.Add(new StudyPull(claims[claim], points, claims[claim].Tests(place)));
        }
    }
}
