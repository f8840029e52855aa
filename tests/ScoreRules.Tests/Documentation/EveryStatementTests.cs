using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Documentation;

/// <summary>
/// Of every kind of statement, changes and drops included: each word lost or made nonsense, each line missing, doubled or misnamed.
/// What is told names what should stand there or what it clashes with, and a spoilt line is one message.
/// </summary>
public sealed class EveryStatementTests
{
    private static readonly string[] Texts = ["section", "philosophy", "note", "change caution", "drop caution"];

    public static TheoryData<int> Statements() => [.. Enumerable.Range(0, TriedStatement.All.Count)];

    [Fact]
    public void Every_kind_of_statement_is_tried() =>
        StatementTable.All.Select(head => head.Words).Except(TriedStatement.All.Select(tried => tried.Syntax.Spec.Words), StringComparer.Ordinal).Except(Texts, StringComparer.Ordinal).ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(Statements))]
    public void A_spoilt_word_is_never_told_in_general_words(int number) =>
        WordMutant.Of(TriedStatement.All[number].Text).SelectMany(mutant => TriedStatement.Findings(mutant.Text).Where(IsGeneric).Select(finding => $"{mutant.Told}: {DiagnosticText.Full(finding)}")).ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(Statements))]
    public void A_line_that_must_stand_is_missed_at_its_statement(int number) =>
        Each(number, (tried, line) => Use(tried, line) is { Required: true } && IsAlone(tried, line) ? Fault(tried.Without(line), "SR1007") : null);

    [Theory]
    [MemberData(nameof(Statements))]
    public void A_line_that_may_stand_once_is_told_when_it_stands_twice(int number) =>
        Each(number, (tried, line) => Use(tried, line) is { Once: true } ? Fault(tried.Twice(line), "SR1008", "SR1020") : null);

    [Theory]
    [MemberData(nameof(Statements))]
    public void A_first_word_that_does_not_exist_is_told_there(int number) =>
        Each(number, (tried, line) => line.Spec.Starter.Length == 0 || tried.Syntax.Spec.NamedLine is not null ? null : Fault(tried.Misnamed(line), "SR1004"));

    private static void Each(int number, Func<TriedStatement, ClauseSyntax, string?> fault) =>
        TriedStatement.All[number].Syntax.Lines.Select(line => fault(TriedStatement.All[number], line)).OfType<string>().ShouldBeEmpty();

    private static string? Fault(string text, params string[] codes) =>
        TriedStatement.Findings(text) is var found && found.Count == 1 && codes.Contains(found[0].Code, StringComparer.Ordinal) ? null : $"{text}\n  {string.Join("\n  ", found.Select(DiagnosticText.Short))}";

    private static ClauseUse Use(TriedStatement tried, ClauseSyntax line) => tried.Syntax.Spec.Lines.First(use => use.Spec == line.Spec);

    private static bool IsAlone(TriedStatement tried, ClauseSyntax line) => tried.Syntax.Lines.Count(other => other.Spec == line.Spec) == 1;

    private static bool IsGeneric(Diagnostic finding) => finding.Suggestions.IsEmpty && finding.Notes.IsEmpty && finding.Others.IsEmpty;
}
