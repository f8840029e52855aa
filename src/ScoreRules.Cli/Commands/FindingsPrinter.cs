using Humanizer;
using ScoreRules.Cli.Terminal;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Cli.Commands;

/// <summary>Prints findings: at most fifty in full, then how many there are.</summary>
internal static class FindingsPrinter
{
    private const int Most = 50;

    /// <summary>Prints to the stream for messages, or as a result.</summary>
    public static void Print(IReadOnlyList<Diagnostic> findings, Action<string> print, bool brief)
    {
        foreach (var finding in findings.Take(Most))
        {
            print(brief ? DiagnosticText.Short(finding) : DiagnosticText.Full(finding) + $"\nmore: scorerules code {finding.Code}\n");
        }

        if (findings.Count > Most)
        {
            print($"... and {"finding".ToQuantity(findings.Count - Most)} more");
        }
    }

    /// <summary>How many errors and warnings there are, in words.</summary>
    public static string Count(IReadOnlyList<Diagnostic> findings)
    {
        var errors = findings.Count(finding => finding.Severity == Severity.Error);
        var warnings = findings.Count(finding => finding.Severity == Severity.Warning);
        return (errors, warnings) switch
        {
            (0, 0) => "no errors, no warnings",
            (_, 0) => "error".ToQuantity(errors),
            (0, _) => "warning".ToQuantity(warnings),
            _ => $"{"error".ToQuantity(errors)}, {"warning".ToQuantity(warnings)}",
        };
    }

    /// <summary>Prints what stopped a ranking; the exit code for it.</summary>
    public static int Stopped(Judgement judgement, Screen screen)
    {
        Print(judgement.Findings, screen.Message, brief: false);
        screen.Error($"{Count(judgement.Findings)}. Nothing is ranked until the errors are mended.");
        return ExitCode.Findings;
    }
}
