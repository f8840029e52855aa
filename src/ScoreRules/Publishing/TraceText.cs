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
    /// <param name="rule">The rule.</param>
    /// <param name="most">How many letters of the author's condition are quoted, where the whole rule stands nearby.</param>
    public static string NoEffect(RuleExplanation rule, int most = int.MaxValue) => rule.Effect switch
    {
        RuleEffect.Exempt => $"excepted{(rule.Exemption?.Because is { } because ? $": \"{Sentences.Sentence(because)}\"" : "")}",
        RuleEffect.Overridden => "overridden by another rule",
        RuleEffect.CouldNotTell => $"could not tell: {Missing(rule.Decisive)}",
        _ => rule.Decisive is null ? "is not about this movement or target" : Failed(rule.Decisive, most),
    };

    /// <summary>The part that decided against, with the value found.</summary>
    public static string Failed(ConditionTrace? decisive, int most = int.MaxValue)
    {
        if (decisive is null)
        {
            return "does not hold";
        }

        return decisive.Verdict == Verdict.CouldNotTell ? $"could not tell: {Missing(decisive)}" : $"did not hold: {Asked(decisive, most)}";
    }

    /// <summary>What a part asks, with the value found or with what is not recorded.</summary>
    public static string Asked(ConditionTrace part, int most = int.MaxValue) => part.Verdict == Verdict.CouldNotTell && part.Fact is not null
        ? $"asks \"{Quoted(part.Condition.Location.Text, most)}\", and {Missing(part)}"
        : $"asks \"{Quoted(part.Condition.Location.Text, most)}\"{(part.Fact is null ? "" : $", found {Found(part)}")}";

    // Cut at a blank, so that no word is broken.
    private static string Quoted(string text, int most)
    {
        if (text.Length <= most)
        {
            return text;
        }

        var cut = text[..most];
        return (cut.LastIndexOf(' ') is > 0 and var blank ? cut[..blank] : cut).TrimEnd(',', ' ') + " ...";
    }

    private static string Found(ConditionTrace trace) =>
        trace is { Attribute: { } attribute, Fact: { } fact } ? $"{attribute.Name} {FactText.Value(attribute, fact.Value)}{FactText.Origin(fact)}" : trace.Condition.Location.Text;

    private static string Missing(ConditionTrace? decisive) => decisive?.Attribute is { } attribute ? $"{attribute.Name} is not recorded" : "a fact is not recorded";
}
