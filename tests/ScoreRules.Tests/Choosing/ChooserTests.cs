using ScoreRules.Choosing;
using ScoreRules.Houses;
using ScoreRules.Publishing.Choices;
using ScoreRules.Tests.Answers;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Choosing;

/// <summary>Choices of the small invented house of the questions: of "arms", both 85, long 70, steady 55, plain 50, low 0 points.</summary>
public sealed class ChooserTests
{
    [Fact]
    public void One_that_serves_everything_best_is_enough()
    {
        var (choice, _) = Ask("choose 2 for arms\n");
        Names(choice).ShouldBe(["both"]);
        choice.Points.ShouldBe(85, 1e-9);
        choice.Chosen[0].InItsPlace[0].Candidates[0].Movement.Name.ShouldBe("long");
    }

    [Fact]
    public void What_must_be_included_is_and_is_said_to_be_needed()
    {
        var (choice, _) = Ask("choose 2 for arms\n  include 1 when handle is free\n");
        Names(choice).ShouldBe(["long", "both"], ignoreOrder: true);
        choice.Chosen.Single(chosen => chosen.Candidate.Movement.Name == "long").NeededFor.ShouldHaveSingleItem().Name.ShouldBe("handle is free");
        choice.Chosen.Single(chosen => chosen.Candidate.Movement.Name == "long").Adds.ShouldBe(0, 1e-9);
    }

    /// <summary>Elbow stress: both 2, plain and long 1 and 3, steady and low 0.</summary>
    [Fact]
    public void A_sum_is_kept_and_the_next_best_taken()
    {
        var (choice, _) = Ask("choose 1 for arms\n  total elbow stress is at most 1\n");
        Names(choice).ShouldBe(["steady"]);
    }

    [Fact]
    public void A_sum_that_cannot_be_kept_is_named_with_the_least_it_could_be()
    {
        var (choice, judgement) = Ask("choose 2 for arms\n  include 1 when handle is free\n  total elbow stress is at most 2\n");
        choice.Chosen.ShouldBeEmpty();
        choice.Obstacle!.Alone.Select(found => (found.Limit.Kind, found.Least)).ShouldBe([(ChoiceLimitKind.Include, null), (ChoiceLimitKind.Total, 3.0)]);
        new ChoiceText(judgement).Print([(judgement, choice)]).ShouldContain("total elbow stress at most 2: with all else kept, the");
    }

    [Fact]
    public void A_profile_offers_only_what_fits_its_kit_and_the_rest_is_told()
    {
        var (choice, judgement) = Ask("choose 1 for arms\n  using profile home\n");
        Names(choice).ShouldBe(["plain"]);
        new ChoiceText(judgement).Print([(judgement, choice)]).ShouldContain("Not offered     both: kit missing, bench, cable");
    }

    [Fact]
    public void The_order_of_files_changes_nothing()
    {
        const string more = "choose 3 for arms\n  include 2 when elbow stress is at most 1\n";
        string[] files = [Quayside.Text(Quayside.Movements), more];
        static string Told(Judgement judgement) => string.Join(", ", Names(Chooser.Choose(judgement, ChoiceRequest.Of(judgement.Ruleset.Choices[0]))));
        Told(Judged.Text(files)).ShouldBe(Told(Judge.Run(new HouseSources([new HouseFile("b.rules", files[0], "", IsSpreadsheet: false), new HouseFile("a.rules", files[1], "", IsSpreadsheet: false)], []))));
    }

    [Theory]
    [InlineData("choose 0 for arms\n", "SR3010")]
    [InlineData("choose 2 for arms\n  include 3 when handle is free\n", "SR3010")]
    [InlineData("choose 2 for arms\n  and handle is free\n", "SR1020")]
    [InlineData("choose 2 for arms\n  total elbow stress is at most 4 kg\n", "SR3003")]
    public void What_makes_no_sense_is_reported(string text, string code) =>
        Judged.Text(Quayside.Text(Quayside.Movements) + text).Findings.Select(finding => finding.Code).ShouldContain(code);

    private static (Choice Choice, Judgement Judgement) Ask(string statement)
    {
        var judgement = Quayside.House(statement);
        var asked = judgement.Ruleset.Choices.ShouldHaveSingleItem();
        judgement = asked.Profile is { } profile ? Judge.For(judgement, profile) : judgement;
        return (Chooser.Choose(judgement, ChoiceRequest.Of(asked)), judgement);
    }

    private static string[] Names(Choice choice) => [.. choice.Chosen.Select(chosen => chosen.Candidate.Movement.Name)];
}
