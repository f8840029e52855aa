using System.Collections.Immutable;
using System.Text;
using ScoreRules.Houses;
using ScoreRules.Language.Binding;

namespace ScoreRules.Publishing.Editions;

/// <summary>
/// The rule text of an edition: all files that were read, under places that do not depend on where they were read from, namely
/// <c>rules/shared</c> and <c>rules/</c> with the name of each house. The frozen folder is itself a house that can be ranked.
/// </summary>
internal static class FrozenHouse
{
    private const string Shared = "shared";

    /// <summary>The sources with the places that they have in an edition.</summary>
    /// <param name="sources">The files read.</param>
    /// <param name="ruleset">The house made from them; it must have a name.</param>
    public static HouseSources Of(HouseSources sources, BoundRuleset ruleset)
    {
        var folders = Folders([.. ruleset.Bases.Select(house => house.Name), ruleset.House!.Name]);
        return new HouseSources([.. sources.Files.Select(file => file with { Path = $"rules/{folders[file.Layer]}/{Path.GetFileName(file.Path)}" }).OrderBy(file => file.Path, StringComparer.Ordinal)], [])
        {
            Nearby = [.. ruleset.Bases.Select(house => house.Name)],
        };
    }

    /// <summary>Its files.</summary>
    public static IEnumerable<EditionFile> Files(HouseSources frozen) => frozen.Files.Select(file => EditionFile.Of(file.Path, file.Text) with { Layer = file.Layer });

    /// <summary>The sources from the files of an edition.</summary>
    public static HouseSources Read(IEnumerable<EditionFile> files, ImmutableArray<string> bases) => new(
        [
            .. files.OrderBy(file => file.Path, StringComparer.Ordinal)
                .Select(file => new HouseFile(file.Path, Encoding.UTF8.GetString(file.Bytes), file.Sha256, file.Path.EndsWith(".csv", StringComparison.OrdinalIgnoreCase)) { Layer = file.Layer ?? 0 }),
        ],
        [])
    {
        Nearby = bases,
    };

    private static List<string> Folders(IReadOnlyList<string> houses)
    {
        var folders = new List<string> { Shared };
        foreach (var slug in houses.Select(EditionName.Slug))
        {
            folders.Add(folders.Contains(slug, StringComparer.Ordinal) ? $"{slug}-{NumberText.Count(folders.Count)}" : slug);
        }

        return folders;
    }
}
