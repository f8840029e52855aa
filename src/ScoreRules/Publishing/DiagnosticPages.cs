using System.Collections.Immutable;
using System.Text;

namespace ScoreRules.Publishing;

/// <summary>The pages of all codes: the very files of <c>docs/diagnostics</c>, carried inside the program.</summary>
public static class DiagnosticPages
{
    private const string Prefix = "diagnostics/";

    /// <summary>All pages by code.</summary>
    public static ImmutableArray<DiagnosticPage> All { get; } = Load();

    /// <summary>The page of a code, in any case, or null.</summary>
    public static DiagnosticPage? Find(string code) => All.FirstOrDefault(page => string.Equals(page.Code, code.Trim(), StringComparison.OrdinalIgnoreCase));

    private static ImmutableArray<DiagnosticPage> Load()
    {
        var assembly = typeof(DiagnosticPages).Assembly;
        return [.. assembly.GetManifestResourceNames().Where(name => name.StartsWith(Prefix, StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(Read)];
    }

    private static DiagnosticPage Read(string resource)
    {
        using var reader = new StreamReader(typeof(DiagnosticPages).Assembly.GetManifestResourceStream(resource)!, Encoding.UTF8);
        var text = reader.ReadToEnd().ReplaceLineEndings("\n");
        var heading = text.Split('\n')[0].TrimStart('#', ' ');
        var code = resource[Prefix.Length..];
        return new DiagnosticPage(code, heading.StartsWith(code, StringComparison.Ordinal) ? heading[code.Length..].TrimStart(':', ' ') : heading, text);
    }
}
