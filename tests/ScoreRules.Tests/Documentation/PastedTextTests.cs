using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Text;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Documentation;

/// <summary>Every example of the language page as a word processor, a chat or another keyboard would hand it over.</summary>
public sealed class PastedTextTests
{
    public static TheoryData<int> Examples() => [.. LanguagePage.Examples.Select(example => example.Number)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Tabs_other_line_ends_and_a_missing_last_line_end_change_nothing(int number)
    {
        var text = Text(number);
        Codes(text.Replace("\n  ", "\n\t", StringComparison.Ordinal)).ShouldBeEmpty();
        Codes(text.ReplaceLineEndings("\r\n")).ShouldBeEmpty();
        Codes(text.TrimEnd('\n')).ShouldBeEmpty();
        Codes("\uFEFF" + text).ShouldBeEmpty();
    }

    /// <summary>No-break spaces inside a line: one message for the line, not one for each space.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public void A_pasted_line_has_one_message_at_most(int number)
    {
        var lines = Text(number).Split('\n');
        for (var i = 0; i < lines.Length; i++)
        {
            var pasted = lines[i][..Indent(lines[i])] + lines[i][Indent(lines[i])..].Replace(' ', '\u00A0');
            Findings(string.Join('\n', [.. lines[..i], pasted, .. lines[(i + 1)..]])).Count(finding => finding.Location.Line == i + 1).ShouldBeLessThanOrEqualTo(1, pasted);
        }
    }

    [Theory]
    [InlineData("call long-lo\u0430ded\n  when long tension is at least 3\n", "SR0003")]
    [InlineData("call \u201Clong loaded\u201D\n  when long tension is at least 3\n", "SR0003")]
    [InlineData("call long\u00A0loaded\u00A0here\n  when long tension is at least 3\n", "SR0003")]
    [InlineData("call long\u200Floaded\n  when long tension is at least 3\n", "SR0007")]
    public void A_sign_that_only_looks_right_is_named_once(string text, string code)
    {
        var finding = Findings(text).ShouldHaveSingleItem();
        finding.Code.ShouldBe(code);
        finding.Headline.ShouldContain("U+");
    }

    private static int Indent(string line) => line.Length - line.TrimStart().Length;

    private static string Text(int number) => LanguagePage.Examples[number].Block.Text;

    private static System.Collections.Immutable.ImmutableArray<Diagnostic> Findings(string text) => SyntaxParser.Parse(new SourceText("pasted.rules", text)).Findings;

    private static IEnumerable<string> Codes(string text) => Findings(text).Select(DiagnosticText.Short);
}
