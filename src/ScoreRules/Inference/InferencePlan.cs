using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Inference.Engine;
using ScoreRules.Language.Binding;

namespace ScoreRules.Inference;

/// <summary>
/// A ruleset made ready for the engine. It does not depend on any movement, so it may be kept while movements, profiles and
/// weights change; a changed rule needs a new plan. May be run by several threads at once, each over a table of its own.
/// </summary>
public sealed class InferencePlan
{
    private readonly RuleList rules;
    private readonly RuleEngine engine;

    private InferencePlan(BoundRuleset ruleset)
    {
        rules = new RuleList(ruleset);
        engine = new RuleEngine(rules.Rules);
    }

    /// <summary>Makes a ruleset ready.</summary>
    /// <exception cref="InferenceException">Rules wait for one another in a circle.</exception>
    public static InferencePlan Compile(BoundRuleset ruleset) => new(ruleset);

    /// <summary>Runs the rules over all rows of a table.</summary>
    /// <param name="facts">The table, made for the same house.</param>
    /// <exception cref="InferenceException">Statements override one another in a circle.</exception>
    public InferenceResult Run(FactTable facts)
    {
        var ranking = new RankingFacts(facts, rules.SlotCount);
        var nowhere = ThreeValuedSet.Nowhere(facts.RowCount);
        var (derived, firings) = engine.Run(ranking, rules.NeverHappening.Select(id => new Concept(id, nowhere)));
        var concepts = derived.OfType<Concept>().ToDictionary(concept => concept.Id, concept => concept.Rows);
        var complete = derived.OfType<WorkedOut>().Aggregate(facts, (table, worked) => table.WithColumn(worked.Attribute, worked.Column));
        var byName = rules.Names.All.ToDictionary(name => name.Key, name => concepts[name.Value], StringComparer.Ordinal);
        return new InferenceResult(complete, OutcomesOf(ranking), byName, ranking.Evaluator) { Firings = firings };
    }

    private ImmutableArray<RuleOutcome> OutcomesOf(RankingFacts ranking)
    {
        var kept = rules.Kept.Select((statement, slot) => (Statement: statement, Condition: ranking.Answer(slot), InScope: ranking.Scope.InScope(statement))).ToList();
        var held = kept.ToDictionary(answer => answer.Statement, answer => answer.Condition.Held.And(answer.InScope), (IEqualityComparer<BoundStatement>)ReferenceEqualityComparer.Instance);
        var overriding = new Overriding(rules.Acting, statement => held[statement]);
        var nowhere = RowSet.None(ranking.Facts.RowCount);
        return
        [
            .. kept.Select(answer => new RuleOutcome(
                answer.Statement,
                answer.Condition,
                answer.InScope,
                ranking.Scope.Excepted(answer.Statement).And(ranking.Scope.Named(answer.Statement)).And(answer.Condition.Held),
                answer.Statement is ConditionalStatement acting ? overriding.RowsOf(acting) : nowhere)),
        ];
    }
}
