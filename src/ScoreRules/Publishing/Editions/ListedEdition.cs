using System.Collections.Immutable;

namespace ScoreRules.Publishing.Editions;

/// <summary>An edition among its neighbours.</summary>
/// <param name="Edition">The edition.</param>
/// <param name="Before">The edition before it of the same house; null for the first.</param>
/// <param name="Changes">What changed since that one.</param>
public sealed record ListedEdition(PublishedEdition Edition, PublishedEdition? Before, ImmutableArray<ListedChange> Changes)
{
    /// <summary>Cautions that were not shown before.</summary>
    public ImmutableArray<string> CautionsAdded => Before is null ? [] : [.. Edition.Cautions.Except(Before.Cautions, StringComparer.Ordinal)];

    /// <summary>Cautions that are shown no longer: their movements have gone, or their words were changed.</summary>
    public ImmutableArray<string> CautionsGone => Before is null ? [] : [.. Before.Cautions.Except(Edition.Cautions, StringComparer.Ordinal)];
}
