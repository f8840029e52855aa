using ScoreRules.Benchmarks.Workloads;

namespace ScoreRules.Benchmarks.Peers;

/// <summary>One pass of a peer over all movements.</summary>
/// <param name="Milliseconds">How long it took.</param>
/// <param name="PeerAnswers">What it found.</param>
internal sealed record PeerRun(double Milliseconds, PeerAnswers PeerAnswers);
