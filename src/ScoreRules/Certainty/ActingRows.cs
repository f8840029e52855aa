using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;

namespace ScoreRules.Certainty;

/// <summary>Where statements act on some rows, read off each inference once: thousands of tries share a few inferences.</summary>
/// <param name="statements">The statements.</param>
/// <param name="rows">The rows.</param>
internal sealed class ActingRows(IEnumerable<BoundStatement> statements, IEnumerable<PlacementRow> rows)
{
    private readonly ImmutableArray<BoundStatement> statements = [.. statements];
    private readonly ImmutableArray<PlacementRow> rows = [.. rows];
    private readonly Dictionary<InferenceResult, bool[][]> read = [];

    /// <summary>By statement and row: whether it acts there.</summary>
    /// <param name="inferred">What the rules find.</param>
    public bool[][] In(InferenceResult inferred)
    {
        if (!read.TryGetValue(inferred, out var acting))
        {
            read[inferred] = acting = [.. statements.Select(inferred.Outcome).Select(outcome => rows.Select(row => outcome.Effective.Contains(row.Index)).ToArray())];
        }

        return acting;
    }
}
