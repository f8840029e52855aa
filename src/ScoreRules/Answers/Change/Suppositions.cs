using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.Change;

/// <summary>
/// Judges a movement with facts supposed to be different. Many suppositions are judged at once, each as a movement of the same name
/// beside the real ones of the target, with what studies give it now; what is told is judged once more, alone, over the whole catalogue
/// and with all studies.
/// </summary>
internal sealed class Suppositions
{
    private const int AtOnce = 512;
    private readonly Judgement before;
    private readonly TargetDefinition target;
    private readonly Movement movement;
    private readonly BoundRuleset trial;
    private readonly ImmutableArray<Movement> neighbours;

    /// <summary>Suppositions about one movement in one target.</summary>
    /// <param name="before">The house.</param>
    /// <param name="ranking">The ranking of the target.</param>
    /// <param name="movement">The movement; it trains the target.</param>
    /// <param name="trial">The rules by which many are tried at once.</param>
    public Suppositions(Judgement before, TargetRanking ranking, Movement movement, BoundRuleset trial)
    {
        this.before = before;
        this.movement = movement;
        target = ranking.Target;
        this.trial = trial;
        var inside = ranking.Placements.Select(placement => placement.Row).Concat(ranking.LeftOut.Select(row => row.Row)).Append(ranking.Benchmark).OfType<PlacementRow>();
        neighbours = [.. inside.Select(row => row.Movement).DistinctBy(other => other.Index).OrderBy(other => other.Index)];
    }

    /// <summary>Whether the tier of one movement depends on how many others there are, so that each supposition is judged by itself.</summary>
    public bool OneByOne => before.Ruleset.Tiers.Any(tier => tier.Cut == TierCut.Top);

    /// <summary>Whether rules read what mechanics derives, which is worked out anew for each supposition.</summary>
    public bool ReadsDerived => before.Ruleset.Criteria.SelectMany(criterion => criterion.Readings).Any(reading => reading.Attribute.IsDerived);

    /// <summary>Judges sets of changes, each by itself.</summary>
    public IEnumerable<Supposed> Judge(IEnumerable<ImmutableArray<FactChange>> sets) =>
        OneByOne ? sets.Select(Alone).OfType<Supposed>() : sets.Chunk(AtOnce).SelectMany(Together);

    /// <summary>Judges one set of changes over the whole catalogue; null when the movement does not train the target then.</summary>
    public Supposed? Alone(ImmutableArray<FactChange> changes)
    {
        var supposed = Apply(changes);
        var judged = ScoreRules.Judge.Again(before, before.Ruleset, new MovementCatalogue(before.Catalogue.Movements.SetItem(movement.Index, supposed)));
        return Find(judged, row => row.Movement.Index == movement.Index, changes);
    }

    /// <summary>A movement with facts replaced.</summary>
    public Movement Apply(ImmutableArray<FactChange> changes) => changes.Aggregate(movement, (made, change) => Supposition.Suppose(made, change.Attribute, change.To));

    private IEnumerable<Supposed> Together(ImmutableArray<FactChange>[] sets)
    {
        ImmutableArray<Movement> crowd = [.. neighbours.Concat(sets.Select(Apply)).Select((one, index) => one with { Index = index })];
        var judged = ScoreRules.Judge.Again(before, trial, new MovementCatalogue(crowd));
        var ranking = judged.Rankings.FirstOrDefault(one => one.Target.Index == target.Index);
        var rows = judged.Inferred!.Facts.Rows.Where(row => row.Target.Index == target.Index).ToDictionary(row => row.Movement.Index);
        var placed = ranking?.Placements.ToDictionary(placement => placement.Row.Movement.Index) ?? [];
        for (var i = 0; i < sets.Length; i++)
        {
            if (rows.TryGetValue(neighbours.Length + i, out var row))
            {
                yield return new Supposed(sets[i], row, placed.GetValueOrDefault(neighbours.Length + i), judged);
            }
        }
    }

    private Supposed? Find(Judgement judged, Func<PlacementRow, bool> isMeant, ImmutableArray<FactChange> changes)
    {
        var row = judged.Inferred!.Facts.Rows.FirstOrDefault(row => row.Target.Index == target.Index && isMeant(row));
        var ranking = judged.Rankings.FirstOrDefault(one => one.Target.Index == target.Index);
        return row is null ? null : new Supposed(changes, row, ranking?.Of(row.Movement), judged);
    }
}
