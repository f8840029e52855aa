using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>Something that is not stated.</summary>
/// <param name="What">What, in words, with what stating it would give.</param>
/// <param name="Facts">The facts that have no value for want of it; empty where a usual value was assumed instead.</param>
public sealed record MissingPart(string What, ImmutableArray<string> Facts);
