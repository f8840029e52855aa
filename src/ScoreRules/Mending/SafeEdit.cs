using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Mending;

/// <summary>A finding with the edit that may be made without asking.</summary>
/// <param name="Finding">The finding.</param>
/// <param name="Suggestion">Its first suggestion with a safe edit.</param>
internal sealed record SafeEdit(Diagnostic Finding, Suggestion Suggestion)
{
    /// <summary>The edit.</summary>
    public TextEdit Edit => Suggestion.Edit!;

    /// <summary>The safe edits of errors and warnings, in the order of the findings.</summary>
    public static ImmutableArray<SafeEdit> Of(IEnumerable<Diagnostic> findings) =>
    [
        .. from finding in findings
           where finding.Severity >= Severity.Warning
           let safe = finding.Suggestions.FirstOrDefault(suggestion => suggestion is { Edit: not null, Safety: EditSafety.Safe })
           where safe is not null
           select new SafeEdit(finding, safe),
    ];
}
