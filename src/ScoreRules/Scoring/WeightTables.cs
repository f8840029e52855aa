using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Scoring;

/// <summary>The weights told for each target of a house.</summary>
internal sealed class WeightTables
{
    private readonly BoundRuleset ruleset;
    private readonly Dictionary<string, CriterionDefinition> criteria = new(StringComparer.Ordinal);

    /// <summary>Works all of them out. What is wrong with a statement is reported once, however many targets it holds for.</summary>
    public WeightTables(BoundRuleset ruleset, DiagnosticBag findings)
    {
        this.ruleset = ruleset;
        foreach (var criterion in ruleset.Criteria)
        {
            criteria.TryAdd(NameText.Key(criterion.Name), criterion);
        }

        var own = new DiagnosticBag();
        TargetDefinition?[] targets = ruleset.Targets.IsEmpty ? [null] : [.. ruleset.Targets];
        All = [.. targets.Select(target => Fill(new WeightTable(target, WeightScope.InForce(ruleset.Weights, target)), own))];
        findings.AddRange(own.ToSorted().DistinctBy(finding => (finding.Code, finding.Headline, finding.Location)));
    }

    /// <summary>One for each target.</summary>
    public ImmutableArray<WeightTable> All { get; }

    /// <summary>Statements about weights that are not in force on the day to judge for.</summary>
    public IEnumerable<StatementInfo> Absent => ruleset.NotInForce.Where(info => info.Kind == "weights");

    /// <summary>That of a target.</summary>
    public WeightTable Table(TargetDefinition? target) => All.First(table => table.Target == target);

    /// <summary>Whether any statement names a criterion.</summary>
    public bool IsNamed(CriterionDefinition criterion) => ruleset.Weights.Any(statement => statement.Criteria.Contains(criterion.Name, StringComparer.Ordinal));

    private WeightTable Fill(WeightTable table, DiagnosticBag findings)
    {
        var hasNumbers = ruleset.Criteria.Any(criterion => table.LineOf(criterion) is { Amount: not null });
        foreach (var statement in table.InForce)
        {
            Enter(statement, table, hasNumbers, findings);
        }

        return table;
    }

    private void Enter(WeightsDefinition statement, WeightTable table, bool hasNumbers, DiagnosticBag findings)
    {
        var names = statement.Criteria;
        var given = names.Select(name => table.LineOf(criteria.GetValueOrDefault(NameText.Key(name)))).ToList();
        if (StatementWeights.Of(statement, given, hasNumbers, findings) is not { } weights)
        {
            return;
        }

        foreach (var (at, name) in names.Index())
        {
            var basis = new WeightBasis(statement, statement.Order.IsEmpty ? 0 : at + 1, names.Length);
            if (table.Enter(name, new ToldWeight(weights[at], basis)) is { } earlier)
            {
                findings.Add(WeightFindings.Twice(name, statement, earlier.Basis.Source));
            }
        }
    }
}
