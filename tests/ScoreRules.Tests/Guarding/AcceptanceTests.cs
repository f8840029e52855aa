using ScoreRules.Language.Diagnostics;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Guarding;

/// <summary>A warning can be accepted in the statement that it points at, with a reason; an acceptance that nothing needs is reported.</summary>
public sealed class AcceptanceTests
{
    private const string House = """
        attribute grip
          one of wide, narrow

        muscle biceps

        target arms
          made of biceps 100 parts
          benchmark curl

        tiers
          Keep is within 5 points of the benchmark
          Swap is the rest

        movement curl
          trains arms
          grip is wide

        give 2 points
          when grip is narrow

        """;

    [Fact]
    public void An_accepted_warning_is_listed_with_its_reason_instead_of_reported()
    {
        Codes(House).ShouldBe(["SR4005"]);

        var judgement = Judged.Text(House.TrimEnd() + "\n  accept SR4005 because the narrow bar comes next week\n");
        judgement.Findings.ShouldBeEmpty();
        judgement.Accepted.Single().By.Because.ShouldBe("the narrow bar comes next week");
        judgement.Accepted.Single().Finding.Code.ShouldBe("SR4005");
    }

    [Theory]
    [InlineData("SR4004")]
    [InlineData("SR9999")]
    public void An_acceptance_of_a_warning_that_is_not_there_is_reported(string code) =>
        Codes(House.TrimEnd() + $"\n  accept {code} because we like it\n").ShouldBe(["SR4005", "SR4007"]);

    [Fact]
    public void An_acceptance_in_another_statement_accepts_nothing() =>
        Codes(House + "give 1 point\n  when grip is wide\n  accept SR4005 because we like it\n").ShouldBe(["SR4005", "SR4007"]);

    [Fact]
    public void An_error_cannot_be_accepted() =>
        Judged.Text(House + "give 1 point\n  when grip is wyde\n  accept SR3001 because we like it\n").Findings.Where(finding => finding.Severity == Severity.Error).Select(finding => finding.Code).ShouldBe(["SR3001"]);

    private static string[] Codes(string text) => [.. Judged.Text(text).Findings.Select(finding => finding.Code).Order(StringComparer.Ordinal)];
}
