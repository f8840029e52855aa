using System.Collections.Immutable;
using CsCheck;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Mending;
using ScoreRules.Tests.Cases;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mending;

/// <summary>What "safe" promises, over thousands of single slips in a real house.</summary>
public sealed class SafeEditTests
{
    private const int SlipsTried = 1500;

    [Fact]
    public void The_house_that_is_damaged_is_sound() => MutantHouse.Findings(MutantHouse.Text).ShouldBeEmpty();

    [Fact]
    public void A_safe_edit_alone_removes_its_finding_and_adds_none_of_another_code() => Slips.In(MutantHouse.Text).Sample(text =>
    {
        var before = MutantHouse.Findings(text);
        foreach (var safe in SafeEdit.Of(before).Where(safe => safe.Edit.Location.Path == MutantHouse.Path))
        {
            var mended = TextEdits.Apply(text, [safe.Edit]);
            var after = MutantHouse.Findings(mended);
            var told = $"{DiagnosticText.Full(safe.Finding)}\n\nthen\n\n{string.Join("\n\n", after.Select(DiagnosticText.Full))}";
            after.ShouldNotContain(finding => IsSame(finding, safe.Finding), told);
            after.Where(finding => !Uncovered(safe.Finding, finding)).Select(finding => finding.Code).Except(before.Select(finding => finding.Code)).ShouldBeEmpty(told);
        }
    }, iter: SlipsTried);

    [Theory]
    [MemberData(nameof(CaseFileTests.Files), MemberType = typeof(CaseFileTests))]
    public void In_the_case_files_too_each_safe_edit_alone_mends_its_fault_and_makes_none(string file)
    {
        var rules = new CaseFile(file).Rules;
        var before = CaseFile.Findings(rules);
        foreach (var safe in SafeEdit.Of(before).Where(safe => safe.Edit.Location.Path == "house.rules"))
        {
            var after = CaseFile.Findings(TextEdits.Apply(rules, [safe.Edit]));
            after.ShouldNotContain(finding => IsSame(finding, safe.Finding), DiagnosticText.Full(safe.Finding));

            after.Where(finding => !Uncovered(safe.Finding, finding)).Select(finding => finding.Code).Except(before.Select(finding => finding.Code)).ShouldBeEmpty(DiagnosticText.Full(safe.Finding));
        }
    }

    [Fact]
    public void Making_safe_edits_again_and_again_ends_and_brings_no_new_fault_of_syntax() => Slips.In(MutantHouse.Text).Sample(text =>
    {
        var (current, rounds) = (text, 0);
        for (var edits = Next(current); edits.Length > 0; edits = Next(current))
        {
            rounds++.ShouldBeLessThan(10);
            var faults = Syntax(current);
            current = TextEdits.Apply(current, edits.Select(safe => safe.Edit));
            Syntax(current).ShouldBeLessThanOrEqualTo(faults, current);
        }
    }, iter: SlipsTried / 3);

    private static ImmutableArray<SafeEdit> Next(string text) =>
        TextEdits.Compatible(SafeEdit.Of(MutantHouse.Findings(text)).Where(safe => safe.Edit.Location.Path == MutantHouse.Path), safe => safe.Edit);

    // A line that can be read again may name something that is declared nowhere: that was so before, only hidden.
    private static bool Uncovered(Diagnostic mended, Diagnostic left) => IsSyntax(mended) && !IsSyntax(left);

    private static int Syntax(string text) => MutantHouse.Findings(text).Count(IsSyntax);

    private static bool IsSyntax(Diagnostic finding) => finding.Code.StartsWith("SR0", StringComparison.Ordinal) || finding.Code.StartsWith("SR1", StringComparison.Ordinal);

    private static bool IsSame(Diagnostic left, Diagnostic right) => left.Code == right.Code && left.Location.Path == right.Location.Path && left.Location.Span.Start == right.Location.Span.Start && left.Headline == right.Headline;
}
