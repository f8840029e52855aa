using ScoreRules.Language.Diagnostics;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Binding;

/// <summary>A slip in a line about joints, loads or pulleys: one message at most, and none only where the line still says the same.</summary>
public sealed class GeometrySlipTests
{
    private const string Rules = """
        ruleset Slips
          version 1
          person 80 kg, 180 cm, female

        muscle brachialis

        target elbow flexors
          made of brachialis 100 parts
          benchmark attic curl

        movement porch curl
          trains elbow flexors
          keeps trunk recline 45°, shoulder external rotation 10°, forearm pronation 80°,
            shoulder horizontal-adduction 0°
          moves elbow flexion 5° to 135°, shoulder extension 5° to 10°
          pulley 0.8 m back, 0.6 m down, 0.05 m out
          external load 100 N
          band 0 N at 80 cm, 60 N at 140 cm
          cam radius 12 cm at 10°, 8 cm at 130°
          foot line 4 cm forward

        movement attic curl
          like porch curl
          but keeps shoulder external rotation 20°
          but moves elbow flexion 5° to 100°
          but pulley 1 m forward
          but external load 20 kg
        """;

    [Fact]
    public void No_slip_is_silent_and_none_has_an_echo()
    {
        Findings(Rules).ShouldBeEmpty();
        var meaning = HouseMeaning.Of(Rules);
        var slips = WordSlip.In(Rules).ToList();
        slips.Count.ShouldBeGreaterThan(300);
        slips.Select(slip => Fault(slip, meaning)).OfType<string>().ShouldBeEmpty();
    }

    private static string? Fault(WordSlip slip, string[] meaning)
    {
        var found = Findings(slip.Text);
        if (found.Length > 1 && !slip.IsSwap)
        {
            return $"echo: {slip.Told}:\n  {string.Join("\n  ", found.Select(DiagnosticText.Short))}";
        }

        return found.Length > 0 || HouseMeaning.Of(slip.Text).SequenceEqual(meaning, StringComparer.Ordinal) ? null : $"silent: {slip.Told}";
    }

    private static Diagnostic[] Findings(string rules) => [.. Judged.Text(rules).Findings.Where(finding => finding.Severity != Severity.Information)];
}
