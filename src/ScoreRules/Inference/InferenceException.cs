using ScoreRules.Language.Binding;

namespace ScoreRules.Inference;

/// <summary>
/// The engine could not apply a ruleset. That is a fault of the program, not of the author: a bound ruleset is sound. The
/// message names the author's rule all the same.
/// </summary>
public sealed class InferenceException : InvalidOperationException
{
    /// <summary>A fault without a rule to name.</summary>
    public InferenceException()
    {
    }

    /// <summary>A fault without a rule to name.</summary>
    public InferenceException(string message)
        : base(message)
    {
    }

    /// <summary>A fault with what caused it.</summary>
    public InferenceException(string message, Exception? innerException)
        : base(message, innerException)
    {
    }

    /// <summary>The author's rule, or null.</summary>
    public StatementInfo? Rule { get; private init; }

    /// <summary>A rule failed.</summary>
    internal static InferenceException InRule(StatementInfo rule, Exception cause) =>
        new($"The rule {NameOf(rule)} could not be applied: {cause.Message}", cause) { Rule = rule };

    /// <summary>Rules wait for one another.</summary>
    internal static InferenceException Circle(string verb, IEnumerable<StatementInfo> rules)
    {
        var circle = rules.ToList();
        return new($"Rules that {verb} one another in a circle cannot be applied: {string.Join(" -> ", circle.Append(circle[0]).Select(NameOf))}.") { Rule = circle[0] };
    }

    /// <summary>What messages call a rule: its title and its place.</summary>
    internal static string NameOf(StatementInfo rule) => $"{rule.Title} ({rule.Location})";
}
