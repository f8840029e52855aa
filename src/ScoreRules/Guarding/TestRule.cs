using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Guarding;

/// <summary>What fails a test of a house: errors, failed expectations, and rules that fight, which a ranking only warns of.</summary>
public static class TestRule
{
    // A cap below a floor.
    private static readonly string[] Clashes = ["SR5007"];

    /// <summary>Findings that fail a test, besides expectations.</summary>
    public static ImmutableArray<Diagnostic> Failing(Judgement judgement) =>
        [.. judgement.Findings.Where(finding => finding.Severity == Severity.Error || Clashes.Contains(finding.Code, StringComparer.Ordinal))];

    /// <summary>Whether a house passes.</summary>
    public static bool Passes(Judgement judgement) => Failing(judgement).IsEmpty && judgement.Expectations.All(result => result.Holds);
}
