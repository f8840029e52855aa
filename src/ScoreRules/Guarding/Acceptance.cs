using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Guarding;

/// <summary>Takes accepted warnings out of the findings, and reports acceptances that nothing needs any more.</summary>
public static class Acceptance
{
    /// <summary>The findings that are left, and the warnings that were accepted.</summary>
    /// <param name="findings">All findings of a house without errors.</param>
    /// <param name="accepted">What its authors accept.</param>
    public static (ImmutableArray<Diagnostic> Left, ImmutableArray<AcceptedFinding> Accepted) Apply(ImmutableArray<Diagnostic> findings, ImmutableArray<AcceptedWarning> accepted)
    {
        var silenced = findings.Select(finding => (finding, By: accepted.FirstOrDefault(acceptance => Silences(acceptance, finding))))
            .Where(pair => pair.By is not null).Select(pair => new AcceptedFinding(pair.finding, pair.By!)).ToImmutableArray();
        var needless = accepted.Where(acceptance => acceptance.Location.Source.IsOwn && !findings.Any(finding => Silences(acceptance, finding)));
        return (DiagnosticBag.Sort([.. findings.Except(silenced.Select(pair => pair.Finding)), .. needless.Select(Needless)]), silenced);
    }

    private static bool Silences(AcceptedWarning acceptance, Diagnostic finding) =>
        finding.Severity == Severity.Warning && string.Equals(finding.Code, acceptance.Code, StringComparison.OrdinalIgnoreCase) && acceptance.Covers(finding.Location);

    private static Diagnostic Needless(AcceptedWarning acceptance) =>
        new("SR4007", Severity.Warning, $"There is no warning {acceptance.Code} to accept here", new Label(acceptance.Location, "nothing needs it"))
        {
            Notes = ["a warning is accepted in the statement that it points at; an error cannot be accepted"],
            Suggestions = [new Suggestion("take the line out")],
        };
}
