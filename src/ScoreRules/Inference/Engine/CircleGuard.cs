using System.Collections.Immutable;

namespace ScoreRules.Inference.Engine;

/// <summary>
/// Refuses rules that wait for one another: they would never fire. The binder reports such circles to the author; this is
/// the last fence before the engine.
/// </summary>
internal sealed class CircleGuard
{
    private readonly ILookup<Antecedent, EngineRule> makers;
    private readonly HashSet<EngineRule> sound = [];
    private readonly List<EngineRule> path = [];

    private CircleGuard(ImmutableArray<EngineRule> rules) =>
        makers = rules.Where(rule => rule.Makes is not null).ToLookup(rule => rule.Makes!.Value);

    /// <summary>Throws when rules wait for one another.</summary>
    public static void Check(ImmutableArray<EngineRule> rules)
    {
        var guard = new CircleGuard(rules);
        foreach (var rule in rules)
        {
            guard.Visit(rule);
        }
    }

    private void Visit(EngineRule rule)
    {
        if (sound.Contains(rule))
        {
            return;
        }

        if (path.IndexOf(rule) is >= 0 and var start)
        {
            // A union rule stands for the call before it, which is in the circle already.
            throw InferenceException.Circle("wait for", path[start..].Where(waiting => waiting is not UnionRule).Select(waiting => waiting.Statement.Info));
        }

        path.Add(rule);
        foreach (var needed in rule.Needs.SelectMany(need => makers[need]))
        {
            Visit(needed);
        }

        path.RemoveAt(path.Count - 1);
        sound.Add(rule);
    }
}
