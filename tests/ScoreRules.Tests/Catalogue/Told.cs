using ScoreRules.Language.Diagnostics;
using Shouldly;

namespace ScoreRules.Tests.Catalogue;

/// <summary>Findings as short texts to compare with.</summary>
internal static class Told
{
    /// <summary>Each finding as its code and, in brackets, exactly what is underlined.</summary>
    public static IEnumerable<string> Places(DiagnosticBag findings) => findings.ToSorted().Select(finding => $"{finding.Code} [{finding.Location.Text}]");

    /// <summary>The only finding.</summary>
    public static Diagnostic Only(DiagnosticBag findings) => findings.ToSorted().ShouldHaveSingleItem();

    /// <summary>The text after the first edit that may be made without asking, or null when there is none.</summary>
    public static string? Mended(Diagnostic finding)
    {
        var edit = finding.Suggestions.FirstOrDefault(suggestion => suggestion is { Safety: EditSafety.Safe, Edit: not null })?.Edit;
        return edit is null ? null : After(edit);
    }

    /// <summary>The texts after each edit, safe or not.</summary>
    public static IEnumerable<string> Offered(Diagnostic finding) =>
        finding.Suggestions.Where(suggestion => suggestion.Edit is not null).Select(suggestion => After(suggestion.Edit!));

    private static string After(TextEdit edit)
    {
        var (text, span) = (edit.Location.Source.Text, edit.Location.Span);
        return text[..span.Start] + edit.Replacement + text[span.End..];
    }
}
