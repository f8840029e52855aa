using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Inference;

/// <summary>
/// Where a statement and one that overrides it would both act, the overridden one has no effect. A statement that is
/// itself overridden on a row overrides nothing there; the binder refuses circles.
/// </summary>
internal sealed class Overrides(Dictionary<BoundStatement, RuleOutcome> outcomes)
{
    private readonly HashSet<BoundStatement> settled = new(ReferenceEqualityComparer.Instance);

    /// <summary>Applies all overrides.</summary>
    public void Apply()
    {
        var overriding = outcomes.Keys.Where(statement => !statement.Info.Overrides.IsEmpty).ToList();
        if (overriding.Count == 0)
        {
            return;
        }

        foreach (var statement in outcomes.Keys.ToList())
        {
            Settle(statement, overriding);
        }
    }

    private void Settle(BoundStatement statement, List<BoundStatement> overriding)
    {
        if (statement.Info.Name is not { } name || !settled.Add(statement))
        {
            return;
        }

        foreach (var other in overriding.Where(other => !ReferenceEquals(other, statement) && other.GetType() == statement.GetType() && other.Info.Overrides.Any(overridden => NameText.Same(overridden, name))))
        {
            Settle(other, overriding);
            var outcome = outcomes[statement];
            var taken = outcome.Effective.And(outcomes[other].Effective);
            outcomes[statement] = outcome with { Effective = outcome.Effective.Without(taken), Overridden = outcome.Overridden.Or(taken) };
        }
    }
}
