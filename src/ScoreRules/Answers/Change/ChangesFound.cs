using System.Collections.Immutable;

namespace ScoreRules.Answers.Change;

/// <summary>Sets of changes that do what was asked for, none of which could do with less. Each was judged again alone, over the whole catalogue.</summary>
/// <param name="Singles">Single changes: for each fact the smallest.</param>
/// <param name="Pairs">Two changes together, smallest first; no part of them does it alone.</param>
/// <param name="Triples">Three changes together.</param>
/// <param name="Tried">How many sets were judged.</param>
/// <param name="Refused">How many would do it, but no such movement can be.</param>
/// <param name="IsBounded">Whether there were more sets of two or three than were tried; the smallest were tried.</param>
public sealed record ChangesFound(ImmutableArray<Supposed> Singles, ImmutableArray<Supposed> Pairs, ImmutableArray<Supposed> Triples, int Tried, int Refused, bool IsBounded)
{
    /// <summary>How many more pairs of facts do it, beyond those told.</summary>
    public int MorePairs { get; init; }

    /// <summary>How many more sets of three facts do it, beyond those told.</summary>
    public int MoreTriples { get; init; }

    /// <summary>All sets.</summary>
    public IEnumerable<Supposed> All => Singles.Concat(Pairs).Concat(Triples);
}
