using System.Collections.Immutable;
using ScoreRules.Evidence;
using ScoreRules.Language.Binding;

namespace ScoreRules.Explanation;

/// <summary>One thing that sets a placement apart from the benchmark (or, without one, that makes its score).</summary>
/// <param name="Name">The criterion or rule, in the author's words.</param>
/// <param name="Points">Points for (positive) or against (negative).</param>
/// <param name="Statement">The statement behind it.</param>
/// <param name="Criterion">The criterion's part, or null for points given or taken.</param>
/// <param name="IsBenchmarks">For points given or taken, studies and judgements: whether it is the benchmark that got them.</param>
public sealed record Reason(string Name, double Points, StatementInfo Statement, CriterionExplanation? Criterion, bool IsBenchmarks = false)
{
    /// <summary>The studies behind it; empty for other reasons.</summary>
    public ImmutableArray<StudyPull> Studies { get; init; } = [];

    /// <summary>Points that studies moved the benchmark, which stand in <see cref="Points"/> the other way.</summary>
    public double BenchmarkMoved { get; init; }

    /// <summary>Whether it is the benchmark's move alone, which is the same for every movement of the target and told once.</summary>
    public bool IsSharedByAll => IsBenchmarks && Criterion is null && !Studies.IsEmpty;
}
