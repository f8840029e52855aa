using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Catalogue.Csv;

/// <summary>Receives the findings about one row.</summary>
/// <param name="findings">Where they go.</param>
/// <param name="within">What messages call the row.</param>
internal sealed class RowReport(DiagnosticBag findings, string within)
{
    /// <summary>Adds a finding and says in which row it stands.</summary>
    public void Add(Diagnostic diagnostic) => findings.Add(diagnostic with { Within = within });
}
