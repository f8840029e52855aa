using System.Text.RegularExpressions;
using ScoreRules.Publishing;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Documentation;

/// <summary>The pages of the codes keep their promise: the wrong example yields the code, the right one nothing to mend.</summary>
public sealed partial class DiagnosticPageTests
{
    private const string ListHeading = "## All codes\n\n";
    private static readonly string[] Headings = ["Wrong", "Right", "How to mend it"];

    public static TheoryData<string> Codes() => [.. DiagnosticPages.All.Select(page => page.Code)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_wrong_example_yields_the_code_and_no_other(string code) => Of(code, Example(code, "Wrong").Codes()).ShouldBe([code]);

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_right_example_yields_no_error_and_not_the_code(string code)
    {
        Example(code, "Right").Errors().ShouldBeEmpty();
        Example(code, "Right").Codes().ShouldNotContain(code);
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_page_has_the_form_of_a_page(string code)
    {
        var lines = DiagnosticPages.Find(code)!.Text.Split('\n');
        lines[0].ShouldStartWith($"# {code}: ");
        lines[0].ShouldNotEndWith(".");
        lines.Where(line => line.StartsWith("## ", StringComparison.Ordinal)).Select(line => line[3..]).ShouldBe(Headings);
        lines[2].ShouldNotBeNullOrWhiteSpace();
        DiagnosticPages.Find(code)!.Text.ShouldNotContain("!");
    }

    [Fact]
    public void Every_code_that_is_raised_has_a_page_and_every_page_a_code()
    {
        var raised = Directory.GetFiles(Repository.PathOf("src"), "*.cs", SearchOption.AllDirectories)
            .Where(path => !path.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .SelectMany(path => RaisedCode().Matches(File.ReadAllText(path)).Select(match => match.Groups["code"].Value))
            .Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);
        DiagnosticPages.All.Select(page => page.Code).ShouldBe(raised);
    }

    [Fact]
    public void The_list_of_codes_is_complete()
    {
        var list = string.Concat(DiagnosticPages.All.Select(page => $"* [{page.Code}]({page.Code}.md): {page.Title}\n"));
        var path = new[] { "docs", "diagnostics", "README.md" };
        var kept = Repository.Read(path).ReplaceLineEndings("\n");
        Golden.Check(kept[..(kept.IndexOf(ListHeading, StringComparison.Ordinal) + ListHeading.Length)] + list, path);
    }

    [Fact]
    public void The_small_house_of_the_examples_has_no_fault() =>
        new PageExample(new MarkdownBlock("rules", "", "")).Codes().ShouldBeEmpty();

    // An example is a fragment: it need not use all that it declares.
    private static IEnumerable<string> Of(string code, IEnumerable<string> found) => found.Where(other => other == code || other != "SR2011");

    private static PageExample Example(string code, string heading) =>
        Example([.. MarkdownBlocks.In(DiagnosticPages.Find(code)!.Text).Where(block => block.Heading == heading)]);

    private static PageExample Example(MarkdownBlock[] blocks) => new(blocks.Single(block => !IsBase(block)), blocks.SingleOrDefault(IsBase));

    private static bool IsBase(MarkdownBlock block) => block.Info.StartsWith("rules base", StringComparison.Ordinal);

    [GeneratedRegex("\"(?<code>SR[0-9]{4})\"", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex RaisedCode();
}
