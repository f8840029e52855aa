using System.Globalization;
using System.Text;
using System.Text.Json;
using ScoreRules.Houses;
using ScoreRules.Publishing.Json;

namespace ScoreRules.Publishing.Editions;

/// <summary>Reads the list of contents of an edition.</summary>
internal static class EditionContents
{
    private const int Known = 1;

    /// <summary>The list.</summary>
    /// <param name="place">The edition, for messages.</param>
    /// <param name="bytes">The bytes of the file.</param>
    /// <exception cref="HouseException">It is no such list.</exception>
    public static EditionDocument Read(string place, byte[] bytes)
    {
        try
        {
            var document = JsonSerializer.Deserialize(Encoding.UTF8.GetString(bytes), OutputContext.Default.EditionDocument);
            return document switch
            {
                { SchemaVersion: > Known } => throw Unreadable(place, $"it is written in form {NumberText.Count(document.SchemaVersion)}, and this program knows form {NumberText.Count(Known)}; read it with scorerules {document.Tool} or newer"),
                { Ruleset: { Name: not null, BuildsOn.IsDefault: false }, Tool: not null, Edition: not null, Files.IsDefault: false } when Day(document.Date) is not null && document.Files.All(file => IsWhole(file, document.Ruleset.BuildsOn.Length + 1)) => document,
                _ => throw Unreadable(place, "something in it is missing"),
            };
        }
        catch (JsonException problem)
        {
            throw Unreadable(place, problem.Message);
        }
    }

    /// <summary>A day as the list writes it; null for anything else.</summary>
    public static DateOnly? Day(string? text) => DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

    private static bool IsWhole(EditionFilePart file, int top) => file is { Path: not null, Sha256: not null } && file.Layer is null or >= 0 && file.Layer.GetValueOrDefault() <= top;

    private static HouseException Unreadable(string place, string why) => new($"\"{place}/{EditionFile.Contents}\" cannot be read as the contents of an edition: {why}. Publish the edition again, or take back the file as it was.");
}
