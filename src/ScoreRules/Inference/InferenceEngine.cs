using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Inference;

/// <summary>Applies a house to the facts by forward chaining: set-at-a-time, every firing and non-firing recoverable.</summary>
public static class InferenceEngine
{
    /// <summary>Makes the rules of a house ready. Takes far longer than a run over a thousand movements, so keep the result while the rules stay.</summary>
    public static CompiledRules Compile(BoundRuleset ruleset) => new(RuleCompilation.Compile(ruleset), new ConditionKeys(ruleset));

    /// <summary>Fires everything that can fire. The facts stay as they are: what recipes work out is in the facts of the result.</summary>
    public static InferenceResult Infer(CompiledRules rules, FactTable facts)
    {
        var workspace = new Workspace(rules.Keys, facts.WithNothingWorkedOut());
        var session = rules.Factory.CreateSession();
        session.Insert(workspace);
        session.Fire();
        new Overrides(workspace.Outcomes).Apply();
        return new InferenceResult(workspace.Facts, workspace.Outcomes, workspace.Concepts, workspace.Firings);
    }

    /// <summary>Compiles and fires.</summary>
    public static InferenceResult Infer(BoundRuleset ruleset, FactTable facts) => Infer(Compile(ruleset), facts);

    /// <summary>All statements that act on movements, in a fixed order of kinds.</summary>
    public static IEnumerable<ConditionalStatement> Rules(BoundRuleset ruleset) =>
        ruleset.Awards.Concat<ConditionalStatement>(ruleset.CancelOuts).Concat(ruleset.Limits).Concat(ruleset.Exclusions).Concat(ruleset.Cautions).Concat(ruleset.Refusals);
}
