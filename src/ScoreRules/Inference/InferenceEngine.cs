using System.Collections.Immutable;
using System.Runtime.ExceptionServices;
using NRules;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Inference;

/// <summary>Applies a house to the facts by forward chaining: set-at-a-time, every firing and non-firing recoverable.</summary>
public static class InferenceEngine
{
    /// <summary>Fires everything that can fire.</summary>
    public static InferenceResult Infer(BoundRuleset ruleset, FactTable facts)
    {
        var workspace = new Workspace(facts, ruleset.Targets);
        var session = new RuleCompilation(workspace).Compile(ruleset).CreateSession();
        session.Insert(facts);
        Fire(session);
        RefuseWaiting(ruleset, workspace);
        ApplyOverrides(ruleset, workspace);
        return new InferenceResult(ruleset, facts, workspace.Outcomes, workspace.Concepts, workspace.Firings);
    }

    // NRules wraps what an action throws; the author's rule is named inside.
    private static void Fire(ISession session)
    {
        try
        {
            session.Fire();
        }
        catch (RuleRhsExpressionEvaluationException fault) when (Cause(fault) is { } cause)
        {
            ExceptionDispatchInfo.Throw(cause);
        }
    }

    private static InferenceException? Cause(Exception? fault) => fault switch
    {
        null => null,
        InferenceException cause => cause,
        _ => Cause(fault.InnerException),
    };

    private static void RefuseWaiting(BoundRuleset ruleset, Workspace workspace)
    {
        var waiting = ruleset.Calls.Concat<BoundStatement>(Rules(ruleset)).Where(statement => !workspace.Outcomes.ContainsKey(statement)).Select(statement => statement.Info).ToList();
        if (waiting.Count > 0)
        {
            throw InferenceException.NeverFired(waiting);
        }
    }

    private static void ApplyOverrides(BoundRuleset ruleset, Workspace workspace)
    {
        var rules = Rules(ruleset).ToImmutableArray();
        if (rules.All(rule => rule.Info.Overrides.IsEmpty))
        {
            return;
        }

        var held = new Dictionary<BoundStatement, RowSet>(workspace.Outcomes.Select(pair => KeyValuePair.Create(pair.Key, pair.Value.Effective)), ReferenceEqualityComparer.Instance);
        var overriding = new Overriding(rules, rule => held[rule]);
        foreach (var rule in rules)
        {
            var taken = overriding.RowsOf(rule);
            workspace.Outcomes[rule] = workspace.Outcomes[rule] with { Overridden = taken, Effective = held[rule].Without(taken) };
        }
    }

    /// <summary>All statements that act on movements, in a fixed order of kinds.</summary>
    public static IEnumerable<ConditionalStatement> Rules(BoundRuleset ruleset) =>
        ruleset.Awards.Concat<ConditionalStatement>(ruleset.CancelOuts).Concat(ruleset.Limits).Concat(ruleset.Exclusions).Concat(ruleset.Cautions).Concat(ruleset.Refusals);
}
