using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Publishing;

/// <summary>Which faults may take away what protects people: those in cautions and limits, and in what these rely on.</summary>
internal sealed class SafetyReliance
{
    private static readonly string[] Protecting = ["caution", "never above", "leave out", "refuse", "ruleset", "profile"];
    private static readonly string[] Makers = ["call", "work out"];
    private readonly BoundRuleset ruleset;
    private readonly HashSet<string> reliedOn = new(StringComparer.Ordinal);

    /// <summary>Follows what cautions, limits, exclusions and refusals ask for, directly or over other facts.</summary>
    public SafetyReliance(BoundRuleset ruleset)
    {
        this.ruleset = ruleset;
        foreach (var statement in ruleset.Cautions.Concat<ConditionalStatement>(ruleset.Limits).Concat(ruleset.Exclusions).Concat(ruleset.Refusals))
        {
            Follow(statement.Condition);
        }
    }

    /// <summary>Whether a fault may. One whose place is not known may.</summary>
    public bool Concerns(Diagnostic fault) => fault.Within is not { } within
        || Array.Exists(Protecting, word => within.StartsWith(word, StringComparison.Ordinal))
        || Array.Exists(Makers, word => within == word)
        || reliedOn.Contains(within);

    private void Follow(Condition? condition)
    {
        foreach (var part in condition is null ? [] : ConditionWalk.Tests(condition))
        {
            if (part is CalledTest called && reliedOn.Add(Title("call", called.Fact)))
            {
                FollowCall(called.Fact);
            }
            else if (part is AttributeTest { Attribute.IsWorkedOut: true } test && reliedOn.Add(Title("work out", test.Attribute.Name)))
            {
                FollowRecipe(test.Attribute.Name);
            }
        }
    }

    private void FollowCall(string fact)
    {
        foreach (var call in ruleset.Calls.Where(call => NameText.Same(call.Fact, fact)))
        {
            Follow(call.Condition);
        }
    }

    private void FollowRecipe(string name)
    {
        foreach (var step in ruleset.Recipes.Where(recipe => NameText.Same(recipe.Info.Name!, name)).SelectMany(recipe => recipe.Steps))
        {
            Follow(step.Condition);
        }
    }

    private static string Title(string kind, string name) => $"{kind} \"{name}\"";
}
