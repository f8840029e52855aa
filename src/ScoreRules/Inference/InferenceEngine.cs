using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Inference;

/// <summary>Applies a ruleset to a table of facts in one step.</summary>
public static class InferenceEngine
{
    /// <summary>Compiles the ruleset and runs it over all rows. To run it over several tables, keep an <see cref="InferencePlan"/>.</summary>
    /// <param name="ruleset">The house.</param>
    /// <param name="facts">The table, made for the same house.</param>
    public static InferenceResult Infer(BoundRuleset ruleset, FactTable facts) => InferencePlan.Compile(ruleset).Run(facts);
}
