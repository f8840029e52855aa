using ScoreRules.Inference;
using ScoreRules.Language.Binding;

namespace ScoreRules.Certainty;

/// <summary>What the rules find when some ways to called facts are not in force; each inference is made once, when it is first asked for.</summary>
/// <param name="ruleset">The house.</param>
/// <param name="whole">What they find with all in force.</param>
/// <param name="admitted">The doubtful statements.</param>
internal sealed class CallVariants(BoundRuleset ruleset, InferenceResult whole, Admitted admitted)
{
    private readonly CallDefinition[] calls = [.. admitted.Calls];
    private readonly Dictionary<int, InferenceResult> made = new() { [0] = whole };

    /// <summary>What is found.</summary>
    /// <param name="right">By place of a doubtful statement: whether it is in force.</param>
    public InferenceResult Of(ReadOnlySpan<bool> right) => At(Missing(right));

    /// <summary>Which doubtful calls are not in force, a bit each.</summary>
    private int Missing(ReadOnlySpan<bool> right)
    {
        var missing = 0;
        for (var i = 0; i < calls.Length; i++)
        {
            missing |= right[admitted.PlaceOf(calls[i])] ? 0 : 1 << i;
        }

        return missing;
    }

    /// <summary>What is found without some of them.</summary>
    /// <param name="missing">A bit each.</param>
    private InferenceResult At(int missing)
    {
        if (!made.TryGetValue(missing, out var found))
        {
            var without = calls.Where((_, i) => (missing >> i & 1) == 1).ToList();
            var variant = ruleset with { Calls = [.. ruleset.Calls.Select(call => without.Contains(call) ? call with { Condition = new Unless(new Everything(call.Condition.Location), call.Condition.Location) } : call)] };
            made[missing] = found = InferencePlan.Compile(variant).Run(whole.Facts);
        }

        return found;
    }
}
