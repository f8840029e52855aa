using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Tiering;

namespace ScoreRules.Teaching;

/// <summary>
/// A ranking in an order in which it can be told: the benchmark first, then every movement beside the one most like it among those
/// already told, along the spanning tree of greatest likeness.
/// </summary>
/// <param name="Ranking">The ranking.</param>
/// <param name="Steps">Every ranked movement once, a cousin before whatever is told beside it.</param>
public sealed record Lesson(TargetRanking Ranking, ImmutableArray<LessonStep> Steps)
{
    /// <summary>Arranges a ranking.</summary>
    /// <param name="judgement">The judgement it is part of.</param>
    /// <param name="ranking">The ranking; it must place something.</param>
    /// <exception cref="InvalidOperationException">Nothing was ranked.</exception>
    public static Lesson Of(Judgement judgement, TargetRanking ranking)
    {
        var explainer = judgement.Explainer ?? throw new InvalidOperationException("Nothing was ranked.");
        var first = ranking.Benchmark ?? ranking.Placements[0].Row;

        // A benchmark that is only measured against is told as well: without it nothing else has a place.
        var rows = ranking.Placements.Select(placement => placement.Row).Append(first).DistinctBy(row => row.Movement.Index).OrderBy(row => row.Movement.Name, StringComparer.Ordinal).ToImmutableArray();
        var likeness = new Likeness(judgement.Ruleset.Attributes);
        var steps = new Dictionary<int, LessonStep>();
        foreach (var node in LikenessTree.Walk(rows.Length, rows.IndexOf(first), (one, other) => likeness.Between(rows[one].Movement, rows[other].Movement)))
        {
            var explained = explainer.Explain(ranking, rows[node.Index].Movement)!;
            var step = new LessonStep(steps.Count + 1, explained, node.Parent is { } parent ? steps[parent] : null, node.Likeness);
            steps.Add(node.Index, step.Cousin is null ? step : Told(step, step.Cousin, likeness, judgement));
        }

        return new Lesson(ranking, [.. steps.Values.OrderBy(step => step.Number)]);
    }

    private static LessonStep Told(LessonStep step, LessonStep cousin, Likeness likeness, Judgement judgement)
    {
        var parts = StepParts.Between(step.Explained, cousin.Explained, judgement.Derived);
        var named = parts.Select(part => part.Criterion?.Attribute.Index).OfType<int>().ToHashSet();
        var (own, others) = (step.Explained.Row.Movement, cousin.Explained.Row.Movement);
        return step with
        {
            Parts = parts,
            Changes = [.. likeness.Different(own, others).Where(attribute => !named.Contains(attribute.Index)).Select(attribute => (attribute, own.Facts[attribute.Index].Value, others.Facts[attribute.Index].Value))],
        };
    }
}
