using System.Collections.Immutable;

namespace ScoreRules.Publishing.Editions;

/// <summary>Finds what changed from one edition to the next.</summary>
public interface IEditionDifference
{
    /// <summary>All changes, target by target in the order of the newer edition, each by name of the movement.</summary>
    ImmutableArray<ListedChange> Between(PublishedEdition older, PublishedEdition newer);
}
