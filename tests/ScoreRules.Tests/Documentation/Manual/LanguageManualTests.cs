using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Documentation.Manual;

/// <summary><c>docs/language.md</c> tells of every statement and every line, and its examples run.</summary>
public sealed class LanguageManualTests
{
    // The house of the examples is so small that a name may go unused, a rule may hold nowhere, and a fact or a joint may be missing.
    private static readonly string[] OfASmallHouse = ["SR2011", "SR4005", "SR7003", "SR7206"];

    public static TheoryData<int> Examples() => [.. Enumerable.Range(0, LanguageManual.Examples.Count)];

    [Fact]
    public void The_forms_are_those_of_the_statement_table() => Golden.Check(LanguageManual.Rewritten(), LanguageManual.File);

    [Fact]
    public void Every_kind_of_statement_has_one_heading()
    {
        var headings = LanguageManual.Text.Split('\n').Where(line => line.StartsWith("### ", StringComparison.Ordinal)).Select(line => line[4..]);
        headings.SelectMany(ManualGrammar.Heads).Select(head => head.Words).Order(StringComparer.Ordinal)
            .ShouldBe(StatementTable.All.Select(head => head.Words).Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_example_runs(int index)
    {
        var (example, below) = LanguageManual.Examples[index];
        var page = new PageExample(example, below);
        page.Errors().ShouldBeEmpty(example.Text);
        page.Codes().Except(OfASmallHouse).ShouldBeEmpty(example.Text);
    }

    /// <summary>The lines of a statement under its own heading, those that mean the same everywhere under theirs.</summary>
    [Fact]
    public void Every_kind_of_line_stands_in_an_example()
    {
        var told = LanguageManual.Blocks.Where(block => block.Info.StartsWith("rules", StringComparison.Ordinal))
            .SelectMany(block => Statements(block.Text).SelectMany(statement => statement.Lines.Select(line => line.Spec).Append(statement.Spec.FirstLine)).Select(spec => (block.Heading, spec)))
            .ToHashSet();
        Wanted().Where(wanted => !told.Contains(wanted)).Select(wanted => $"{wanted.Heading}: {wanted.Spec.Starter}").ShouldBeEmpty();
    }

    private static IEnumerable<(string Heading, ClauseSpec Spec)> Wanted()
    {
        var everywhere = Uniform.Lines.Concat(Reach.Lines).Select(use => use.Spec).ToHashSet();
        var own = from heading in LanguageManual.Blocks.Select(block => block.Heading).Distinct()
                  where heading is not "change" and not "drop"
                  from head in ManualGrammar.Heads(heading)
                  from spec in head.Lines.Select(use => use.Spec).Append(head.FirstLine)
                  where !everywhere.Contains(spec)
                  select (heading, spec);
        var changes = StatementTable.All.Where(head => head.Words.StartsWith("change ", StringComparison.Ordinal) && !LanguageManual.IsRefused(head)).Select(head => ("change", head.FirstLine));
        ClauseSpec[] special = [OverlayGrammar.Points, OverlayGrammar.NeverAbove, OverlayGrammar.NeverBelow, OverlayGrammar.Counts, OverlayGrammar.Tier];
        return [.. own, .. changes, .. special.Select(spec => ("change", spec)), .. Uniform.Lines.Select(use => ("shared lines", use.Spec)), .. Reach.Lines.Select(use => ("conditions", use.Spec))];
    }

    private static System.Collections.Immutable.ImmutableArray<StatementSyntax> Statements(string text) => SyntaxParser.Parse(new SourceText("page.rules", text)).Statements;
}
