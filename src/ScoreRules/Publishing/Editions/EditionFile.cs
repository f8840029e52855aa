using System.Security.Cryptography;
using System.Text;

namespace ScoreRules.Publishing.Editions;

/// <summary>A file of a published edition.</summary>
/// <param name="Path">Its place in the edition, with forward slashes.</param>
/// <param name="Bytes">Its bytes.</param>
public sealed record EditionFile(string Path, byte[] Bytes)
{
    /// <summary>Name of the list of contents.</summary>
    public const string Contents = "edition.json";

    /// <summary>Name of the web page.</summary>
    public const string Page = "page.html";

    /// <summary>Name of the rankings as Markdown.</summary>
    public const string Markdown = "ranking.md";

    /// <summary>Name of the rankings as a spreadsheet.</summary>
    public const string Sheet = "ranking.csv";

    /// <summary>Name of the rankings as JSON.</summary>
    public const string Json = "ranking.json";

    /// <summary>Name of the expectations with what became of them, as JSON.</summary>
    public const string Expectations = "expectations.json";

    /// <summary>For rule text, which house of a chain it belongs to; null for what was made from it.</summary>
    public int? Layer { get; init; }

    /// <summary>SHA-256 of its bytes, lower-case hexadecimal.</summary>
    public string Sha256 => Convert.ToHexStringLower(SHA256.HashData(Bytes));

    /// <summary>A file of text, in UTF-8.</summary>
    public static EditionFile Of(string path, string text) => new(path, Encoding.UTF8.GetBytes(text));
}
