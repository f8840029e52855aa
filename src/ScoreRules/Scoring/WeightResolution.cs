using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Scoring;

/// <summary>
/// Gives criteria that count <c>by weights</c> their weight, target by target. Criteria with a number of their own set the
/// scale; without any, the weights of a statement make 100.
/// </summary>
public static class WeightResolution
{
    /// <summary>The ruleset with all weights as numbers; reports those that cannot be found.</summary>
    public static BoundRuleset Resolve(BoundRuleset ruleset, DiagnosticBag findings)
    {
        if (ruleset.Weights.IsEmpty && ruleset.Criteria.All(criterion => criterion.Weights.All(weight => weight.Amount is not null)))
        {
            return ruleset;
        }

        var tables = new WeightTables(ruleset, findings);
        return ruleset with { Criteria = [.. ruleset.Criteria.Select(criterion => criterion with { Weights = [.. criterion.Weights.SelectMany(weight => Fill(criterion, weight, tables, findings))] })] };
    }

    // One line stays one line where all its targets get the same weight from the same statement.
    private static IEnumerable<CriterionWeight> Fill(CriterionDefinition criterion, CriterionWeight line, WeightTables tables, DiagnosticBag findings)
    {
        if (line.Amount is not null)
        {
            return [line];
        }

        var found = tables.All.Where(table => table.LineOf(criterion) == line).Select(table => (table.Target, Weight: table.Of(criterion.Name))).ToList();
        foreach (var lacking in found.Where(pair => pair.Weight is null).Take(1))
        {
            Report(criterion, line, lacking.Target, tables, findings);
        }

        var groups = found.GroupBy(pair => pair.Weight).ToList();
        return groups.Count switch
        {
            0 => [line],
            1 => [Filled(line, groups[0].Key)],
            _ => groups.Select(group => Filled(line, group.Key) with { Targets = [.. group.Select(pair => pair.Target).OfType<TargetDefinition>()] }),
        };
    }

    private static CriterionWeight Filled(CriterionWeight line, ToldWeight? told) =>
        told is null ? line : line with { Amount = UncertainNumber.Certain(told.Number), Basis = told.Basis };

    // Where another fault took the weights away, that one has been told.
    private static void Report(CriterionDefinition criterion, CriterionWeight line, TargetDefinition? target, WeightTables tables, DiagnosticBag findings)
    {
        if (!findings.HasErrors && !tables.Table(target).InForce.Any(statement => statement.Criteria.Contains(criterion.Name, StringComparer.Ordinal)))
        {
            findings.Add(WeightFindings.NotNamed(criterion, line, tables.IsNamed(criterion) ? target : null, tables.Absent));
        }
    }
}
