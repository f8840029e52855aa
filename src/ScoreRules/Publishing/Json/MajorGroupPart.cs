using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>A major muscle group in a week.</summary>
/// <param name="Group">Its name.</param>
/// <param name="TrainedBy">The movements chosen that train it; none where nothing can.</param>
public sealed record MajorGroupPart(string Group, ImmutableArray<string> TrainedBy);
