namespace ScoreRules.Benchmarks.Peers;

/// <summary>What the Node script writes.</summary>
/// <param name="Milliseconds">One for each pass over all movements.</param>
/// <param name="Held">By rule: the rows for which it holds.</param>
internal sealed record JsonRulesEngineResult(IReadOnlyList<double> Milliseconds, IReadOnlyList<IReadOnlyList<int>> Held);
