using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Diagnostics;

/// <summary>Collects findings and gives them back in the order of their places.</summary>
public sealed class DiagnosticBag
{
    private readonly List<Diagnostic> found = [];

    /// <summary>Whether an error is among the findings.</summary>
    public bool HasErrors => found.Exists(d => d.Severity == Severity.Error);

    /// <summary>Adds one finding.</summary>
    public void Add(Diagnostic diagnostic) => found.Add(diagnostic);

    /// <summary>Adds several findings.</summary>
    public void AddRange(IEnumerable<Diagnostic> diagnostics) => found.AddRange(diagnostics);

    /// <summary>Whether something was found at exactly this place.</summary>
    public bool HasAt(SourceLocation place) => found.Exists(d => d.Location.Source == place.Source && d.Location.Span == place.Span);

    /// <summary>All findings by file and place, then code; exact repetitions once.</summary>
    public ImmutableArray<Diagnostic> ToSorted() => Sort(found);

    /// <summary>Findings by file and place, then code; exact repetitions (same code at the same place) once.</summary>
    public static ImmutableArray<Diagnostic> Sort(IEnumerable<Diagnostic> diagnostics) =>
    [
        .. diagnostics
            .DistinctBy(d => (d.Code, d.Location.Path, d.Location.Span, d.Headline))
            .OrderBy(d => d.Location, Comparer<SourceLocation>.Create(SourceLocation.Compare))
            .ThenBy(d => d.Code, StringComparer.Ordinal)
            .ThenBy(d => d.Headline, StringComparer.Ordinal),
    ];
}
