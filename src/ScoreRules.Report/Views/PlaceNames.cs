using System.Collections.Immutable;
using System.Globalization;
using ScoreRules.Houses;
using ScoreRules.Language.Text;

namespace ScoreRules.Report.Views;

/// <summary>Places as a published page names them: the file without the folders of whoever made the page; with its own folder where two files have one name.</summary>
public sealed class PlaceNames(HouseSources sources)
{
    private readonly ImmutableHashSet<string> shared =
        [.. sources.Files.GroupBy(file => Last(file.Path, 1), StringComparer.Ordinal).Where(group => group.Count() > 1).Select(group => group.Key)];

    /// <summary>The name of a file.</summary>
    public string File(string path) => path.StartsWith('(') ? path : Last(path, shared.Contains(Last(path, 1)) ? 2 : 1);

    /// <summary>A place: file and line.</summary>
    public string Of(SourceLocation location) => $"{File(location.Path)}:{location.Line.ToString(CultureInfo.InvariantCulture)}";

    /// <summary>A text in which places were printed in full, with those names shortened.</summary>
    public string Shorten(string text) =>
        sources.Files.OrderByDescending(file => file.Path.Length).Aggregate(text, (so, file) => so.Replace(file.Path, File(file.Path), StringComparison.Ordinal));

    private static string Last(string path, int parts) => string.Join('/', path.Split('/')[^Math.Min(parts, path.Split('/').Length)..]);
}
