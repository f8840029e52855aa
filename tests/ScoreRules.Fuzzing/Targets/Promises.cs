using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Fuzzing.Targets;

/// <summary>What holds for every finding about any text.</summary>
internal static class Promises
{
    /// <summary>Findings can be printed, and point into the texts they speak of.</summary>
    /// <exception cref="BrokenPromiseException">One does not.</exception>
    public static void Keep(IEnumerable<Diagnostic> findings)
    {
        foreach (var finding in findings)
        {
            Demand(DiagnosticText.Full(finding).Length > 0 && DiagnosticText.Short(finding).Length > 0, "A finding prints nothing.");
            foreach (var label in finding.Others.Append(finding.Primary))
            {
                var (source, span) = (label.Location.Source, label.Location.Span);
                Demand(span.Start >= 0 && span.Length >= 0 && span.End <= source.Text.Length, $"{finding.Code} points outside the text.");
            }
        }
    }

    /// <summary>Something holds.</summary>
    /// <exception cref="BrokenPromiseException">It does not.</exception>
    public static void Demand(bool holds, string message)
    {
        if (!holds)
        {
            throw new BrokenPromiseException(message);
        }
    }
}
