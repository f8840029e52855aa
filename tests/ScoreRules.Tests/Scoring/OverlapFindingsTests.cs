using ScoreRules.Scoring;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Scoring;

/// <summary>Criteria that count one thing twice.</summary>
public sealed class OverlapFindingsTests
{
    /// <summary>The overlap of the two recommended facts over the shared movements, as two independent code paths of the design gave it: 0.79.</summary>
    [Fact]
    public void The_second_edition_of_Longreach_overlaps_by_the_figure_of_the_design_and_accepts_it()
    {
        var accepted = Judged.House("longreach-second").Accepted.Single(accepted => accepted.Finding.Code == "SR4010");
        accepted.Finding.Notes.Single().ShouldStartWith("their rank correlation is 0.79 over ");
    }

    [Fact]
    public void Criteria_that_read_ratings_only_are_left_alone() =>
        Judged.Longreach.Findings.Concat(Judged.LindenCourt.Findings).ShouldNotContain(finding => finding.Code == "SR4010");

    [Fact]
    public void The_bounds_are_those_the_page_tells()
    {
        OverlapFindings.Much.ShouldBe(0.75);
        Repository.Read("docs", "diagnostics", "SR4010.md").ShouldContain("rank correlation of 0.75 or more, over six placements or more");
        OverlapFindings.FewestRows.ShouldBe(6);
    }
}
