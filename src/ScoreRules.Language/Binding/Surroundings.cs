using System.Collections.Immutable;

namespace ScoreRules.Language.Binding;

/// <summary>What is given with the files of a house but stands in none of them.</summary>
/// <param name="Houses">Names of the houses in the folders beside, for suggestions.</param>
/// <param name="Date">The day to judge for; null for the day on which the house says it was checked.</param>
public sealed record Surroundings(ImmutableArray<string> Houses, DateOnly? Date)
{
    /// <summary>Nothing.</summary>
    public static Surroundings None { get; } = new([], null);
}
