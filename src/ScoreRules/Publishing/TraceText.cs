using ScoreRules.Explanation;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;

namespace ScoreRules.Publishing;

/// <summary>Conditions in words, with the values found.</summary>
internal static class TraceText
{
    /// <summary>What made a condition hold: its parts with the values found.</summary>
    public static string Held(ConditionTrace trace) => trace.Condition switch
    {
        Everything => "for every movement",
        AllOf or AnyOf => string.Join(", ", trace.Parts.Where(part => part.Verdict == trace.Verdict).Select(Held)),
        Language.Binding.Unless => $"unless {Held(trace.Parts[0])} (it is not so)",
        CalledTest called => called.Fact,
        _ => Found(trace),
    };

    /// <summary>Why a rule had no effect.</summary>
    public static string NoEffect(RuleExplanation rule) => rule.Effect switch
    {
        RuleEffect.Exempt => $"excepted{(rule.Exemption?.Because is { } because ? $": \"{Sentences.Sentence(because)}\"" : "")}",
        RuleEffect.Overridden => "overridden by another rule",
        RuleEffect.CouldNotTell => $"could not tell: {Missing(rule.Decisive)}",
        _ => rule.Decisive is null ? "is not about this movement or target" : Failed(rule.Decisive),
    };

    /// <summary>The part that decided against, with the value found.</summary>
    public static string Failed(ConditionTrace? decisive)
    {
        if (decisive is null)
        {
            return "does not hold";
        }

        return decisive.Verdict == Verdict.CouldNotTell ? $"could not tell: {Missing(decisive)}" : $"did not hold: asks \"{decisive.Condition.Location.Text}\"{(decisive.Fact is null ? "" : $", found {Found(decisive)}")}";
    }

    private static string Found(ConditionTrace trace) =>
        trace is { Attribute: { } attribute, Fact: { } fact } ? $"{attribute.Name} {FactText.Value(attribute, fact.Value)}{FactText.Origin(fact)}" : trace.Condition.Location.Text;

    private static string Missing(ConditionTrace? decisive) => decisive?.Attribute is { } attribute ? $"{attribute.Name} is not recorded" : "a fact is not recorded";
}
