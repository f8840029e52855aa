using ScoreRules.Catalogue;
using ScoreRules.Language;
using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding.Exercising;

/// <summary>
/// The placements on which the outcome of an expectation depends: those of the movements it names, in the targets it is about, and, where it
/// speaks of tiers or order, the benchmark's. A claim about a share of a list names no placement; it depends on none in particular.
/// </summary>
/// <param name="Rows">The placements.</param>
/// <param name="Groups">The kinds of rule that can change its outcome there.</param>
internal sealed record ExpectationReach(RowSet Rows, Func<RuleGroup, bool> Groups)
{
    /// <summary>The placements of one expectation.</summary>
    public static ExpectationReach Of(Judgement judgement, ExpectationDefinition expectation)
    {
        var facts = judgement.Inferred!.Facts;
        var named = new[] { expectation.Movement, expectation.Other }.OfType<string>().Select(judgement.Catalogue.Find).OfType<Movement>().Select(movement => movement.Index).ToHashSet();
        var rows = facts.Rows.Where(row => named.Contains(row.Movement.Index) && IsAbout(expectation, row.Target)).ToList();
        var both = expectation.Other is null ? rows : [.. rows.GroupBy(row => row.Target.Index).Where(group => group.Count() == 2).SelectMany(group => group)];
        return expectation.Kind switch
        {
            ClaimKind.Called or ClaimKind.OtherThan => new(Set(facts, both), group => group is RuleGroup.CalledFact or RuleGroup.Recipe),
            ClaimKind.LeftOut => new(Set(facts, both), group => group is RuleGroup.CalledFact or RuleGroup.Recipe or RuleGroup.Exclusion),
            _ => new(Set(facts, [.. both, .. Benchmarks(judgement, both)]), _ => true),
        };
    }

    private static bool IsAbout(ExpectationDefinition expectation, TargetDefinition target) =>
        expectation.Targets.IsEmpty || expectation.Targets.Any(named => named.Name == target.Name);

    private static IEnumerable<PlacementRow> Benchmarks(Judgement judgement, List<PlacementRow> rows)
    {
        var targets = rows.Select(row => row.Target.Index).ToHashSet();
        return judgement.Rankings.Where(ranking => targets.Contains(ranking.Target.Index)).Select(ranking => ranking.Benchmark).OfType<PlacementRow>();
    }

    private static RowSet Set(FactTable facts, IEnumerable<PlacementRow> rows) => RowSet.Of(facts.RowCount, rows.Select(row => row.Index));
}
