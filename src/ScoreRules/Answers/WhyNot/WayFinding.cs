using ScoreRules.Explanation;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.WhyNot;

/// <summary>One statement of the name asked for, and what became of it.</summary>
/// <param name="Statement">The statement.</param>
/// <param name="Effect">What became of it.</param>
/// <param name="IsInScope">Whether it is about this movement and target at all.</param>
/// <param name="Trace">Its condition, part by part.</param>
public sealed record WayFinding(BoundStatement Statement, RuleEffect Effect, bool IsInScope, ConditionTrace Trace)
{
    /// <summary>The parts that decided against it or could not be told, in the order of the text.</summary>
    public IEnumerable<ConditionTrace> Failed => Parts(Trace).Where(part => part.Verdict != Verdict.Held);

    private static IEnumerable<ConditionTrace> Parts(ConditionTrace trace) => trace.Condition is AllOf ? trace.Parts.SelectMany(Parts) : [trace];
}
