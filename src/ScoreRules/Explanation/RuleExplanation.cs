using ScoreRules.Inference;
using ScoreRules.Language.Binding;

namespace ScoreRules.Explanation;

/// <summary>What became of one of the author's rules for a placement.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Effect">What became of it.</param>
/// <param name="Trace">Its condition, part by part, with the values found.</param>
/// <param name="Exemption">The line that excepts the movement or target, where it is exempt.</param>
public sealed record RuleExplanation(ConditionalStatement Rule, RuleEffect Effect, ConditionTrace Trace, ScopeEntry? Exemption)
{
    /// <summary>The first part that decided against it or could not be told; null where the condition holds.</summary>
    public ConditionTrace? Decisive => Effect is RuleEffect.DidNotHold or RuleEffect.CouldNotTell ? Trace.FirstDecisive() : null;
}
