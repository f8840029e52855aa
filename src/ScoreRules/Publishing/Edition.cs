using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace ScoreRules.Publishing;

/// <summary>Which judgement a printed page came from: the house, its version, and a fingerprint of all that went in.</summary>
/// <param name="House">Name of the house.</param>
/// <param name="Version">Its version as written; empty when it has none.</param>
/// <param name="Fingerprint">First twelve hexadecimal digits of the SHA-256 over the inputs, the profile and the day.</param>
internal sealed record Edition(string House, string Version, string Fingerprint)
{
    private const int Digits = 12;

    /// <summary>The edition on one line: "Longreach, version 3.0.0, edition 0f3a...".</summary>
    public string Text => $"{House}{(Version.Length == 0 ? "" : $", version {Version}")}, edition {Fingerprint}";

    /// <summary>The edition of a judgement. Files count by folder and name, not by where they stand, so that a copied house keeps its edition.</summary>
    public static Edition Of(Judgement judgement)
    {
        var files = judgement.Sources.Files.Select(file => $"{file.Layer.ToString(CultureInfo.InvariantCulture)} {Path.GetFileName(file.Path)} {file.Sha256}").Order(StringComparer.Ordinal);
        var inputs = string.Join('\n', [.. files, $"profile {judgement.Profile?.Name}", $"day {judgement.Ruleset.Date?.ToString("O", CultureInfo.InvariantCulture)}"]);
        var hash = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(inputs)));
        return new Edition(judgement.Ruleset.House?.Name ?? "House without a name", judgement.Ruleset.House?.Version ?? "", hash[..Digits]);
    }
}
