using System.Collections.Immutable;
using System.Text.Json;
using ScoreRules.Houses;
using ScoreRules.Publishing.Json;

namespace ScoreRules.Publishing.Editions;

/// <summary>An edition as it was published, by whatever version of the program.</summary>
/// <param name="Name">Its name, which is that of its folder.</param>
/// <param name="Contents">Its list of contents.</param>
/// <param name="Targets">Its rankings.</param>
/// <param name="Cautions">Texts of all cautions that it shows, each once: those of the whole page first.</param>
public sealed record PublishedEdition(string Name, EditionDocument Contents, ImmutableArray<PublishedTarget> Targets, ImmutableArray<string> Cautions)
{
    /// <summary>Cautions that stand above or under every list.</summary>
    public ImmutableArray<string> CautionsForAll { get; init; } = [];

    /// <summary>Its day.</summary>
    public DateOnly Date => EditionContents.Day(Contents.Date)!.Value;

    /// <summary>Whether it has a file.</summary>
    public bool Has(string file) => Contents.Files.Any(part => part.Path == file);

    /// <summary>Reads one from its files.</summary>
    /// <exception cref="HouseException">It cannot be read.</exception>
    public static PublishedEdition Read(string name, IReadOnlyDictionary<string, byte[]> files)
    {
        var contents = EditionContents.Read(name, files.TryGetValue(EditionFile.Contents, out var list) ? list : []);
        try
        {
            using var json = JsonDocument.Parse(files.TryGetValue(EditionFile.Json, out var ranking) ? ranking : []);
            var targets = json.RootElement.GetProperty("targets").EnumerateArray().Select(Target).ToImmutableArray();
            var forAll = Texts(json.RootElement).ToImmutableArray();
            var others = json.RootElement.GetProperty("targets").EnumerateArray().SelectMany(target => target.GetProperty("placements").EnumerateArray()).SelectMany(Texts);
            return new PublishedEdition(name, contents, targets, [.. forAll.Concat(others).Distinct(StringComparer.Ordinal)]) { CautionsForAll = forAll };
        }
        catch (Exception problem) when (problem is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            throw new HouseException($"\"{name}/{EditionFile.Json}\" cannot be read as rankings, so the editions cannot be listed: {problem.Message} Take back the file as it was, or move the folder \"{name}\" elsewhere.", problem);
        }
    }

    private static PublishedTarget Target(JsonElement target) => new(
        target.GetProperty("name").GetString()!,
        target.TryGetProperty("benchmark", out var benchmark) ? benchmark.GetString() : null,
        [
            .. target.GetProperty("placements").EnumerateArray().Select(row => new PublishedPlacement(row.GetProperty("movement").GetString()!, row.GetProperty("tier").GetString(), row.GetProperty("rank").GetInt32(), row.GetProperty("score").GetDouble())),
            .. target.GetProperty("leftOut").EnumerateArray().Select(row => new PublishedPlacement(row.GetProperty("movement").GetString()!, null, null, row.GetProperty("score").GetDouble())),
        ]);

    private static IEnumerable<string> Texts(JsonElement part) => part.GetProperty("cautions").EnumerateArray().Select(caution => caution.GetProperty("text").GetString()!);
}
