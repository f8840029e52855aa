namespace ScoreRules.Benchmarks.Workloads;

/// <summary>What an evaluation found: the same for every peer, or it is not timed.</summary>
/// <param name="Held">By rule, as 64-bit words: the rows where it acts.</param>
/// <param name="Scores">By row: the score in points.</param>
internal sealed record PeerAnswers(ulong[][] Held, double[] Scores)
{
    /// <summary>Says where two answers differ first, or null when they are equal to the last bit.</summary>
    public string? DifferenceFrom(PeerAnswers other)
    {
        for (var rule = 0; rule < Held.Length; rule++)
        {
            if (!Held[rule].AsSpan().SequenceEqual(other.Held[rule]))
            {
                return FormattableString.Invariant($"rule {rule} holds for other movements");
            }
        }

        var row = Scores.AsSpan().CommonPrefixLength(other.Scores);
        return row == Scores.Length && row == other.Scores.Length ? null : FormattableString.Invariant($"row {row} has another score");
    }
}
