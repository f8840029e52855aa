using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax;

/// <summary>Writes the scanner's findings, with the statement in which the line being scanned stands.</summary>
internal sealed class SignReport(SourceText source, DiagnosticBag findings)
{
    /// <summary>What messages call the statement.</summary>
    public string? Within { get; set; }

    /// <summary>The section heading above it.</summary>
    public string? Section { get; set; }

    /// <summary>Adds an error.</summary>
    public void Add(string code, int at, int length, string headline, string label, Suggestion suggestion) =>
        findings.Add(new Diagnostic(code, Severity.Error, headline, new Label(source.At(new SourceSpan(at, length)), label))
        {
            Within = Within,
            Section = Section,
            Suggestions = [suggestion],
        });

    /// <summary>An edit that replaces a stretch.</summary>
    public TextEdit Replace(int at, int length, string with) => new(source.At(new SourceSpan(at, length)), with);
}
