using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;

namespace ScoreRules.Choosing;

/// <summary>Turns what a request asks for into limits over candidates. What could not be told of a movement does not count for it.</summary>
internal sealed class ChoiceLimits(Judgement judgement, ImmutableArray<ChoiceCandidate> candidates)
{
    private readonly Likeness likeness = new(judgement.Ruleset.Attributes);

    /// <summary>All limits but those of a week and of the count, in the order of the request.</summary>
    public IEnumerable<ChoiceLimit> Of(ChoiceRequest request)
    {
        var inferred = judgement.Inferred!;
        foreach (var fact in request.Cover)
        {
            var concept = inferred.Concept(fact);
            yield return AtLeast(ChoiceLimitKind.Cover, fact, 1, candidate => candidate.Placements.Any(placement => concept.VerdictOf(placement.Row.Index) == Verdict.Held));
        }

        foreach (var include in request.Includes)
        {
            yield return AtLeast(ChoiceLimitKind.Include, Words(include.Condition), include.Count, candidate => candidate.Placements.Any(placement => inferred.VerdictOf(include.Condition, placement.Row.Index) == Verdict.Held));
        }

        foreach (var (attribute, most) in request.Totals)
        {
            yield return Total(attribute, most);
        }

        if (request.MostAlike is { } alike)
        {
            yield return Apart(ChoiceLimitKind.Alike, "", (one, other) => likeness.Between(one, other) > alike) with { Amount = 100 * alike, Unit = "%" };
        }

        foreach (var only in request.MoreThan)
        {
            yield return Apart(ChoiceLimitKind.DifferOnlyBy, string.Join(", ", only.Select(attribute => attribute.Name)), (one, other) => likeness.Different(one, other).All(only.Contains));
        }
    }

    /// <summary>At least so many of those that fit.</summary>
    public AtLeastLimit AtLeast(ChoiceLimitKind kind, string name, int least, Func<ChoiceCandidate, bool> fits) =>
        new(kind, name, [.. Enumerable.Range(0, candidates.Length).Where(index => fits(candidates[index]))], least) { Amount = least };

    // Rounded so that a sum in whole thousandths never passes what the sum in numbers may be.
    private AtMostLimit Total(AttributeDefinition attribute, double most) =>
        new(ChoiceLimitKind.Total, attribute.Name, [.. candidates.Select(candidate => (long)Math.Ceiling(Scaled(CandidateList.Number(judgement, candidate, attribute))))], (long)Math.Floor(Scaled(most))) { Amount = most, Unit = attribute.Unit };

    private NotTogetherLimit Apart(ChoiceLimitKind kind, string name, Func<Movement, Movement, bool> tooClose)
    {
        var pairs = ImmutableArray.CreateBuilder<(int, int)>();
        for (var first = 0; first < candidates.Length; first++)
        {
            for (var second = first + 1; second < candidates.Length; second++)
            {
                if (tooClose(candidates[first].Movement, candidates[second].Movement))
                {
                    pairs.Add((first, second));
                }
            }
        }

        return new NotTogetherLimit(kind, name, pairs.ToImmutable());
    }

    private static double Scaled(double number) => Tiering.Rounding.Compared(number * AtMostLimit.Scale);

    private static string Words(Condition condition) => condition is AllOf all ? string.Join(" and ", all.Parts.Select(part => part.Location.Text)) : condition.Location.Text;
}
