using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Tests.Documentation.Manual;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Syntax.Words;

/// <summary>Each line of each kind of statement, as the manual's examples have it: missing, doubled, or with first words that do not exist.</summary>
public sealed class LineMutantTests
{
    public static TheoryData<int> Examples() => [.. Enumerable.Range(0, LanguageManual.Examples.Count)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_line_that_must_stand_is_missed_at_its_statement(int index) =>
        Each(index, (house, statement, line) => !Use(statement, line).Required || IsMany(statement, line) ? null
            : Check(house, Without(house, line), found => found is ["SR1007"]));

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_line_that_may_stand_once_is_reported_when_it_stands_twice(int index) =>
        Each(index, (house, statement, line) => !Use(statement, line).Once ? null : Check(house, Twice(house, line), found => found is ["SR1008"] or ["SR1020"]));

    [Theory]
    [MemberData(nameof(Examples))]
    public void First_words_that_do_not_exist_are_reported_there(int index) =>
        Each(index, (house, statement, line) => line.Spec.Starter.Length == 0 || statement.Spec.NamedLine is not null ? null
            : Check(house, Misnamed(house, line), found => found is ["SR1004"], house.Text.LineOf(line.Span.Start)));

    private static void Each(int index, Func<ExampleHouse, StatementSyntax, ClauseSyntax, string?> fault)
    {
        var (example, below) = LanguageManual.Examples[index];
        var house = new ExampleHouse(example, below);
        SyntaxParser.Parse(house.Text).Statements.SelectMany(statement => statement.Lines.Select(line => fault(house, statement, line))).OfType<string>().ShouldBeEmpty();
    }

    private static string? Check(ExampleHouse house, string text, Func<string[], bool> isRight, int line = 0)
    {
        var found = house.Findings(text).Where(finding => finding.Severity == Severity.Error).ToList();
        return isRight([.. found.Select(finding => finding.Code)]) && (line == 0 || found[0].Location.Line == line) ? null : $"{text}\n  {string.Join("\n  ", found.Select(DiagnosticText.Short))}";
    }

    private static ClauseUse Use(StatementSyntax statement, ClauseSyntax line) => statement.Spec.Lines.First(use => use.Spec == line.Spec);

    private static bool IsMany(StatementSyntax statement, ClauseSyntax line) => statement.Lines.Count(other => other.Spec == line.Spec) > 1;

    private static string Without(ExampleHouse house, ClauseSyntax line) => house.Text.Text.Remove(line.Span.Start, line.Span.Length).Replace("\n  \n", "\n", StringComparison.Ordinal);

    private static string Twice(ExampleHouse house, ClauseSyntax line) => house.Text.Text.Insert(line.Span.End, "\n  " + house.Text.Slice(line.Span));

    private static string Misnamed(ExampleHouse house, ClauseSyntax line) =>
        house.Text.Text.Remove(line.Span.Start, line.Spec.Starter.Length).Insert(line.Span.Start, "plover");
}
