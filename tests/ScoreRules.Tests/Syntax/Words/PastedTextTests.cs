using ScoreRules.Language.Diagnostics;
using ScoreRules.Tests.Documentation.Manual;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Syntax.Words;

/// <summary>The manual's examples as they come out of other programs: other blanks and line ends mean the same, other signs are told once a line.</summary>
public sealed class PastedTextTests
{
    public static TheoryData<int> Examples() => [.. Enumerable.Range(0, LanguageManual.Examples.Count)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Tabs_other_line_ends_and_a_missing_last_one_mean_the_same(int index)
    {
        var house = House(index);
        var (text, found) = (house.Text.Text, Said(house.Findings(house.Text.Text)));
        foreach (var other in new[] { text.Replace("\n", "\r\n", StringComparison.Ordinal), text.TrimEnd('\n'), text.Replace("\n  ", "\n\t", StringComparison.Ordinal), text.Replace(" ", "  ", StringComparison.Ordinal), "\uFEFF" + text })
        {
            house.MeansTheSame(other).ShouldBeTrue();
            Said(house.Findings(other)).ShouldBe(found);
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void No_break_spaces_are_told_once_a_line(int index) => EachLine(index, line => line.Count(c => c == ' ') < 3 ? null : line[..^line.TrimStart().Length] + line.TrimStart().Replace(' ', '\u00A0'), "SR0003");

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_mark_for_writing_from_right_to_left_is_told_where_it_stands(int index) => EachLine(index, line => line.Insert(line.LastIndexOf(' ') + 1, "\u200F"), "SR0007");

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_letter_of_another_script_is_told_as_such(int index) =>
        EachLine(index, line => line.LastIndexOf('a') is var at && at > line.TrimEnd().LastIndexOf(' ') + 1 ? $"{line[..at]}\u0430{line[(at + 1)..]}" : null, "SR0003");

    [Theory]
    [MemberData(nameof(Examples))]
    public void Curly_quotes_round_a_name_are_told_once(int index) => EachLine(index, line => line.Contains('"', StringComparison.Ordinal) ? Curly(line) : null, "SR0003");

    // Each line damaged in turn; free text may hold any sign, so there nothing is found. In the first words it is found as a word that is not known.
    private static void EachLine(int index, Func<string, string?> damage, string code)
    {
        var house = House(index);
        var lines = house.Text.Text.Split('\n');
        var known = house.Findings(house.Text.Text).Count(finding => finding.Severity == Severity.Error);
        known.ShouldBe(0);
        for (var i = 0; i < lines.Length; i++)
        {
            if (lines[i].Trim().Contains(' ', StringComparison.Ordinal) && damage(lines[i]) is { } damaged)
            {
                var found = house.Findings(string.Join('\n', [.. lines[..i], damaged, .. lines[(i + 1)..]])).Where(finding => finding.Severity == Severity.Error).ToList();
                (found.Count == 0 ? "free text" : found is [var one] && one.Location.Line == i + 1 && (one.Code == code || one.Code is "SR1003" or "SR1004" or "SR1002") ? "told" : string.Join('\n', found.Select(DiagnosticText.Short)))
                    .ShouldBe(found.Count == 0 ? "free text" : "told", damaged);
            }
        }
    }

    private static string Curly(string line)
    {
        var first = line.IndexOf('"', StringComparison.Ordinal);
        var second = line.IndexOf('"', first + 1);
        return $"{line[..first]}“{line[(first + 1)..second]}”{line[(second + 1)..]}";
    }

    private static string[] Said(Diagnostic[] findings) => [.. findings.Select(finding => $"{finding.Code} {finding.Headline}")];

    private static ExampleHouse House(int index) => new(LanguageManual.Examples[index].Example, LanguageManual.Examples[index].Below);
}
