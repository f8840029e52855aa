using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Inference;

/// <summary>Applies a house to the facts by forward chaining: set-at-a-time, every firing and non-firing recoverable.</summary>
public static class InferenceEngine
{
    /// <summary>Fires everything that can fire.</summary>
    public static InferenceResult Infer(BoundRuleset ruleset, FactTable facts)
    {
        var workspace = new Workspace(facts);
        var session = new RuleCompilation(workspace).Compile(ruleset).CreateSession();
        session.Insert(facts);
        session.Fire();
        new Overrides(workspace.Outcomes).Apply();
        return new InferenceResult(facts, workspace.Outcomes, workspace.Concepts, workspace.Firings);
    }

    /// <summary>All statements that act on movements, in a fixed order of kinds.</summary>
    public static IEnumerable<ConditionalStatement> Rules(BoundRuleset ruleset) =>
        ruleset.Awards.Concat<ConditionalStatement>(ruleset.CancelOuts).Concat(ruleset.Limits).Concat(ruleset.Exclusions).Concat(ruleset.Cautions).Concat(ruleset.Refusals);
}
