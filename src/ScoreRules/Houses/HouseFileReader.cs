using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Houses;

/// <summary>Reads one file: its bytes, their fingerprint, and its text as UTF-8.</summary>
internal sealed class HouseFileReader(DiagnosticBag findings)
{
    private const long LargestRules = 16L << 20;
    private const long LargestSpreadsheet = 64L << 20;
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The file, or null when it cannot be read (which is reported).</summary>
    public HouseFile? Read(string path)
    {
        var spreadsheet = path.EndsWith(".csv", StringComparison.OrdinalIgnoreCase);
        try
        {
            var size = new FileInfo(path).Length;
            if (size > (spreadsheet ? LargestSpreadsheet : LargestRules))
            {
                Report(findings, path, $"is too large to be read: {(size >> 20).ToString(CultureInfo.InvariantCulture)} MB", "split it into several files");
                return null;
            }

            var bytes = File.ReadAllBytes(path);
            return new HouseFile(path, Decode(path, bytes), Convert.ToHexStringLower(SHA256.HashData(bytes)), spreadsheet);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            Report(findings, path, $"cannot be read: {exception.Message}", "check that the file is there and may be read");
            return null;
        }
    }

    private string Decode(string path, byte[] bytes)
    {
        try
        {
            return Strict.GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            var text = Encoding.UTF8.GetString(bytes);
            var source = new SourceText(path, text);
            var at = Math.Max(0, text.IndexOf('\uFFFD', StringComparison.Ordinal));
            findings.Add(new Diagnostic("SR0001", Severity.Error, $"\"{path}\" is not written in UTF-8", new Label(source.At(new SourceSpan(at, at < text.Length ? 1 : 0)), "first byte that is not UTF-8"))
            {
                Suggestions = [new Suggestion("save the file again with the encoding UTF-8")],
            });
            return text;
        }
    }

    /// <summary>Reports a file that cannot be read.</summary>
    public static void Report(DiagnosticBag findings, string path, string problem, string advice) =>
        findings.Add(new Diagnostic("SR0008", Severity.Error, $"\"{path}\" {problem}", new Label(new SourceText(path, "").At(default), ""))
        {
            Suggestions = [new Suggestion(advice)],
        });
}
