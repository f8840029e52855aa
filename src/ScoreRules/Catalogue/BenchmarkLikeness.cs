using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Catalogue;

/// <summary>Likeness of every placement row to the benchmark of its target, in %.</summary>
public static class BenchmarkLikeness
{
    /// <summary>The column for the built-in attribute; NaN where a target's benchmark is not in the catalogue.</summary>
    public static double[] Column(BoundRuleset ruleset, MovementCatalogue catalogue, ImmutableArray<PlacementRow> rows)
    {
        var likeness = new Likeness(ruleset.Attributes);
        var benchmarks = ruleset.Targets.Select(target => catalogue.Find(target.Benchmark)).ToImmutableArray();
        return [.. rows.Select(row => benchmarks[row.Target.Index] is { } benchmark ? 100 * likeness.Between(row.Movement, benchmark) : double.NaN)];
    }
}
