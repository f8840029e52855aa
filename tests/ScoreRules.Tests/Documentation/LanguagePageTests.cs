using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Documentation;

/// <summary><c>docs/language.md</c> tells every kind of statement and every line of it, as the table has them, and its examples run.</summary>
public sealed class LanguagePageTests
{
    private const string Conditions = "Which movements: conditions";
    private const string Uniformly = "Lines that every statement may have";

    // A fragment need not use all that it declares, and a small house has few movements for a rule to reach.
    private static readonly string[] OfFragments = ["SR7206", "SR2011", "SR4005", "SR4004"];

    public static TheoryData<int> Examples() => [.. LanguagePage.Examples.Select(example => example.Number)];

    public static TheoryData<string> Heads() => [.. StatementTable.Own.Select(head => head.Words)];

    [Fact]
    public void The_small_house_has_no_fault() =>
        Judge.Run(new LanguageExample(0, new("rules", "", ""), null).With("")).Findings.Select(DiagnosticText.Short).ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(Examples))]
    public void An_example_can_be_run(int number)
    {
        var example = LanguagePage.Examples[number];
        var judgement = Judge.Run(example.With(example.Block.Text), profile: null, new DateOnly(2031, 8, 20));
        judgement.Findings.Where(finding => !OfFragments.Contains(finding.Code)).Select(DiagnosticText.Full).ShouldBeEmpty();
        (example.Block.Info == "rules alone" || !judgement.Rankings.IsEmpty).ShouldBeTrue();
    }

    [Theory]
    [MemberData(nameof(Heads))]
    public void A_statement_has_an_example_with_each_of_its_lines(string words)
    {
        var head = StatementTable.Own.Single(head => head.Words == words);
        var used = Statements().Where(statement => statement.Spec == head).ToList();
        used.ShouldNotBeEmpty();
        Told(head).Select(use => use.Spec).Where(spec => !used.Exists(statement => statement.Has(spec))).Select(spec => spec.Starter).ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Heads))]
    public void A_statement_has_a_row_for_each_of_its_lines_and_says_how_often_it_may_stand(string words)
    {
        var head = StatementTable.Own.Single(head => head.Words == words);
        var rows = LanguagePage.Rows.Where(row => row.Heading == LanguagePage.HeadingOf(head) && row.Line != "conditions").Select(row => $"{row.Line}: {row.HowOften}").ToList();
        var told = Told(head).Select(use => $"{Name(use.Spec)}: {HowOften(head, use)}").ToList();
        (words.StartsWith("ask ", StringComparison.Ordinal) ? rows.Intersect(told) : rows).ShouldBe(told, ignoreOrder: true);
        LanguagePage.Rows.Any(row => row.Heading == LanguagePage.HeadingOf(head) && row.Line == "conditions").ShouldBe(head.Lines.Any(use => use.Spec == Reach.When));
    }

    [Fact]
    public void The_lines_of_conditions_and_of_every_statement_have_a_row_and_an_example()
    {
        Rows(Uniformly).ShouldBe(Uniform.Lines.Select(use => $"{use.Spec.Starter}: {HowOften(null, use)}"), ignoreOrder: true);
        Rows(Conditions).ShouldBe(Reach.Lines.Select(use => $"{use.Spec.Starter}: {HowOften(null, use)}"), ignoreOrder: true);
        Uniform.Lines.Concat(Reach.Lines).Select(use => use.Spec).Where(spec => !Statements().Any(statement => statement.Has(spec))).Select(spec => spec.Starter).ShouldBeEmpty();
    }

    [Fact]
    public void Each_kind_of_change_and_drop_is_named()
    {
        foreach (var head in OverlayGrammar.All.Where(head => !head.Words.EndsWith("caution", StringComparison.Ordinal)))
        {
            LanguagePage.Text.ShouldContain($"`{head.Words[(head.Words.IndexOf(' ', StringComparison.Ordinal) + 1)..].Replace("expectation", "drop expectation", StringComparison.Ordinal)}`", Case.Sensitive, head.Words);
        }
    }

    /// <summary>What the page says is not yet applied is what the program lists so, and nothing else.</summary>
    [Fact]
    public void What_has_no_effect_yet_is_said_to_have_none()
    {
        var listed = LanguagePage.Examples.SelectMany(example => Judge.Run(example.With(example.Block.Text)).Ruleset.NotYetApplied).Select(later => later.What).Distinct(StringComparer.Ordinal).ToList();
        var rows = LanguagePage.Text.Split('\n').Where(line => line.StartsWith("| `", StringComparison.Ordinal) && line.Contains("not yet applied", StringComparison.Ordinal)).Select(line => line.Split('`')[1]).ToList();
        foreach (var row in rows.Where(row => row != "accept"))
        {
            listed.ShouldContain(what => what.EndsWith(row.Replace("but ", "", StringComparison.Ordinal), StringComparison.Ordinal) || what.StartsWith($"ruleset: {row}", StringComparison.Ordinal), row);
        }

        listed.Where(what => what.Contains(": ", StringComparison.Ordinal)).Select(what => what.Split(": ")[1]).Where(what => !rows.Exists(row => what.StartsWith(row, StringComparison.Ordinal))).ShouldBeEmpty();
    }

    private static IEnumerable<string> Rows(string heading) => LanguagePage.Rows.Where(row => row.Heading == heading).Select(row => $"{row.Line}: {row.HowOften}");

    private static IEnumerable<StatementSyntax> Statements() =>
        LanguagePage.Examples.SelectMany(example => SyntaxParser.Parse(new SourceText("example.rules", example.Block.Text)).Statements);

    private static string Name(ClauseSpec spec) => spec.Starter.Length == 0 ? LanguagePage.NamedLine : spec.Starter;

    private static string HowOften(HeadSpec? head, ClauseUse use) =>
        (head is not null && head.OneOf.Contains(use.Spec) ? "one of these" : use.Required ? "needed" : "may") + (use.Once ? "" : ", repeat");

    // The lines that a statement has of its own; conditions and uniform lines have a section each. A recipe's and a choice's conditions are their own.
    private static IEnumerable<ClauseUse> Told(HeadSpec head) =>
        head.Lines.Where(use => !Uniform.Lines.Contains(use) && !(head.Lines.Any(other => other.Spec == Reach.When) && Reach.Lines.Any(reach => reach.Spec == use.Spec)));
}
