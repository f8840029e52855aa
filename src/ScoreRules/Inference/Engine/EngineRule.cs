using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Inference.Engine;

/// <summary>
/// One rule as the engine runs it: it waits until all facts it needs are in working memory, then acts once for all rows.
/// </summary>
/// <param name="statement">The author's statement behind it.</param>
internal abstract class EngineRule(BoundStatement statement)
{
    /// <summary>The author's statement behind it.</summary>
    public BoundStatement Statement { get; } = statement;

    /// <summary>Rules that could act at the same time act by falling priority: 0 for those on given facts, then -1 and so on.</summary>
    public int Priority { get; init; }

    /// <summary>Derived facts that it waits for, each once.</summary>
    public ImmutableArray<Antecedent> Needs { get; init; } = [];

    /// <summary>The derived fact that it makes, or null.</summary>
    public Antecedent? Makes { get; init; }

    /// <summary>Acts for all rows.</summary>
    /// <param name="ranking">The table, and where answers are kept.</param>
    /// <param name="matched">The facts it waited for, in their order in <see cref="Needs"/>.</param>
    /// <returns>The fact it makes, or null.</returns>
    public abstract DerivedFact? Act(RankingFacts ranking, DerivedFact[] matched);
}
