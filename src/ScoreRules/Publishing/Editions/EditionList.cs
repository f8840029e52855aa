using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Publishing.Editions;

/// <summary>All editions in one folder, house by house in the order of their names, the newest edition first.</summary>
/// <param name="Houses">Each house with its editions.</param>
public sealed record EditionList(ImmutableArray<(string House, ImmutableArray<ListedEdition> Editions)> Houses)
{
    /// <summary>Arranges editions: by day, then by version, then by name; a version is compared number by number.</summary>
    /// <param name="editions">The editions, in any order.</param>
    /// <param name="difference">Finds what changed between neighbours.</param>
    public static EditionList Of(IEnumerable<PublishedEdition> editions, IEditionDifference difference) => new(
    [
        .. editions.GroupBy(edition => NameText.Key(edition.Contents.Ruleset.Name), StringComparer.Ordinal).OrderBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => Neighbours([.. group.OrderBy(edition => edition.Date).ThenBy(edition => edition.Contents.Ruleset.Version, NumberedNames.Order).ThenBy(edition => edition.Name, NumberedNames.Order)], difference)),
    ]);

    /// <summary>Title of the pages.</summary>
    public string Title => Houses.Length == 1 ? $"{Houses[0].House}: editions" : "Published editions";

    private static (string House, ImmutableArray<ListedEdition> Editions) Neighbours(ImmutableArray<PublishedEdition> oldestFirst, IEditionDifference difference)
    {
        var listed = oldestFirst.Select((edition, i) => i == 0
            ? new ListedEdition(edition, null, [])
            : new ListedEdition(edition, oldestFirst[i - 1], difference.Between(oldestFirst[i - 1], edition)));
        return (oldestFirst[^1].Contents.Ruleset.Name, [.. listed.Reverse()]);
    }
}
