using System.Collections.Immutable;
using ScoreRules.Answers.Change;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.Gaps;

/// <summary>Finds movements that could be and that the catalogue does not hold: each movement with one fact varied, judged as if it were there.</summary>
internal static class GapFinder
{
    private const int Told = 5;
    private const double Alike = 0.5;

    /// <summary>The answer.</summary>
    public static GapAnswer Find(AskedHouse asked) => new(asked.Question, [.. asked.Rankings.Select(ranking => Find(asked, ranking))]);

    private static GapList Find(AskedHouse asked, TargetRanking ranking)
    {
        var cell = Attributes(asked.Ruleset, GapAnswer.Varied.Concat(GapAnswer.Fixed));
        var taken = asked.Judgement.Catalogue.Movements.Select(movement => Cell(movement, cell)).ToHashSet(StringComparer.Ordinal);
        var found = ranking.Placements.SelectMany(placement => Varied(asked, ranking, placement))
            .Where(gap => taken.Add(Cell(gap.Supposed.Row.Movement, cell))).ToList();
        var possible = found.Where(gap => !gap.Supposed.IsRefused && gap.Supposed.Placement is not null)
            .OrderBy(gap => gap.Supposed.Placement!.Tier.Index).ThenByDescending(gap => Rounding.Compared(gap.Supposed.Placement!.Score)).ThenBy(gap => gap.Like.Index).ToList();
        // The best of each movement: its other variations rate much the same.
        var best = possible.DistinctBy(gap => gap.Like.Index).Take(Told).Select(gap => WithSpread(gap.Like, Added(asked.Judgement, gap.Supposed), ranking, asked.Ruleset));
        return new GapList(ranking.Target, [.. best], possible.Count - Math.Min(Told, possible.DistinctBy(gap => gap.Like.Index).Count()), found.Count(gap => gap.Supposed.IsRefused));
    }

    private static IEnumerable<(PlacementRow Like, Supposed Supposed)> Varied(AskedHouse asked, TargetRanking ranking, Placement placement)
    {
        var movement = placement.Row.Movement;
        var kin = asked.Judgement.Catalogue.Movements.Where(other => IsKin(movement, other, Attributes(asked.Ruleset, [GapAnswer.Pattern]))).ToList();
        var changes = Attributes(asked.Ruleset, GapAnswer.Varied).Where(attribute => movement.Facts[attribute.Index].Value.IsKnown)
            .SelectMany(attribute => kin.SelectMany(other => other.Facts[attribute.Index].Value.Codes).Distinct().Order().Where(code => !movement.Facts[attribute.Index].Value.Codes.Contains(code))
                .Select(code => (ImmutableArray<FactChange>)[new FactChange(attribute, movement.Facts[attribute.Index], FactValue.Of([code]))]));
        // What rules say of it by name does not hold for one that is varied.
        var varied = movement with { Name = $"{movement.Name}, varied", Synonyms = [] };
        return new Suppositions(asked.Judgement, ranking, varied, asked.OnPrinciple).Judge(changes).Select(supposed => (placement.Row, supposed));
    }

    // As if it stood in the catalogue beside the others, with all studies.
    private static Supposed Added(Judgement judgement, Supposed tried)
    {
        var added = tried.Row.Movement with { Index = judgement.Catalogue.Movements.Length };
        var again = Judge.Again(judgement, judgement.Ruleset, new MovementCatalogue(judgement.Catalogue.Movements.Add(added)));
        var row = again.Inferred!.Facts.Rows.First(row => row.Movement.Index == added.Index && row.Target.Index == tried.Row.Target.Index);
        return tried with { Row = row, Judgement = again, Placement = again.Rankings.First(ranking => ranking.Target.Index == row.Target.Index).Of(added) };
    }

    // Words that no movement of the same pattern has would make a movement nobody does.
    private static bool IsKin(Movement movement, Movement other, ImmutableArray<AttributeDefinition> pattern) =>
        pattern.All(attribute => movement.Facts[attribute.Index].Value.Codes.SequenceEqual(other.Facts[attribute.Index].Value.Codes));

    private static ImmutableArray<AttributeDefinition> Attributes(BoundRuleset ruleset, IEnumerable<string> names) =>
        [.. names.Select(name => ruleset.Attributes.FirstOrDefault(attribute => NameText.Same(attribute.Name, name) && attribute.IsWord)).OfType<AttributeDefinition>()];

    private static string Cell(Movement movement, ImmutableArray<AttributeDefinition> attributes) =>
        string.Join('|', attributes.Select(attribute => string.Join(',', movement.Facts[attribute.Index].Value.Codes)));

    private static GapFinding WithSpread(PlacementRow like, Supposed supposed, TargetRanking ranking, BoundRuleset ruleset)
    {
        var likeness = new Likeness(ruleset.Attributes);
        var cousins = ranking.Placements.Select(placement => (placement.Score, Alike: likeness.Between(placement.Row.Movement, supposed.Row.Movement))).Where(cousin => cousin.Alike >= Alike).ToList();
        var weight = cousins.Sum(cousin => cousin.Alike);
        var mean = cousins.Sum(cousin => cousin.Alike * cousin.Score) / weight;
        var spread = cousins.Count < 2 ? double.NaN : Math.Sqrt(cousins.Sum(cousin => cousin.Alike * Math.Pow(cousin.Score - mean, 2)) / weight);
        return new GapFinding(like, supposed, spread, cousins.Count);
    }
}
