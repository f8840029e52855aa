using ScoreRules.Answers.NewStudy;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Answers;

/// <summary>
/// Two scores with a doubt of 5 points each and no kinship differ with variance 50; a study with 3 points of its own and 3 of a lone study
/// has variance 18, so that a study counts for 50 of 68 parts of the difference.
/// </summary>
public sealed class NewStudyTests
{
    private const string Evidence = "evidence\n  principles may be off by 5 points\n  a lone study adds 3 points of doubt\n\n";

    // mate 70, other 60: 10 + (50 / 68) (d - 10) = 0 at d = -3.6, so a tenth beyond at most they have changed places.
    [Fact]
    public void The_result_that_turns_an_order_is_what_a_pencil_finds()
    {
        const string pair = "movement mate\n  trains arms\n  reach is 2, hold is 4, handle is straight, elbow stress is 0\n  equipment has nothing\n\nmovement other\n  trains arms\n  reach is 2, hold is 3, handle is straight, elbow stress is 0\n  equipment has nothing\n\n";
        var turn = Ask("what a study of mate against other would change", pair).Turns.Single(turn => turn.Kind == StudyEffectKind.Order);
        turn.IsUpward.ShouldBeFalse();
        turn.Difference.ShouldBeInRange(-3.7001, -3.5999);
    }

    /// <summary>Writing the study into the house, a tenth on either side, shows the turn.</summary>
    [Fact]
    public void Each_result_told_turns_it_when_it_is_written_into_the_house()
    {
        var finding = Ask("what a study of long against steady would change", "");
        finding.Turns.ShouldNotBeEmpty();
        foreach (var turn in finding.Turns)
        {
            var (beyond, before) = (turn.Difference, turn.Difference + (turn.IsUpward ? -0.2 : 0.2));
            State(turn.Kind, beyond).ShouldNotBe(State(turn.Kind, before), $"{turn}");
        }
    }

    [Fact]
    public void A_house_that_does_not_weigh_studies_says_so() => Quayside.Ask<NewStudyAnswer>("what a study of long against steady would change").Answer.CanWeigh.ShouldBeFalse();

    private static NewStudyFinding Ask(string question, string more) => Quayside.Ask<NewStudyAnswer>(question, Evidence + more).Answer.Findings.Single();

    private static string State(StudyEffectKind kind, double difference)
    {
        var (first, second) = difference < 0 ? ("steady", "long") : ("long", "steady");
        var study = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"study New-2031\n  compares movements\n  measured {first} is {Math.Abs(difference):0.0} points give or take 3 points better than {second}\n  outcome growth\n  people 20 adults\n  weigh it\n\n");
        var house = Judged.Text(Quayside.Text(Quayside.Movements).Replace("  version 1\n", "  version 1\n  judges growth\n", StringComparison.Ordinal) + Evidence + study);
        var ranking = house.Target("arms");
        var (one, other) = (ranking.Of(house.Movement("long"))!, ranking.Of(house.Movement("steady"))!);
        return kind switch { StudyEffectKind.Order => $"{Math.Sign(one.Rank - other.Rank)}", StudyEffectKind.FirstTier => one.Tier.Name, _ => other.Tier.Name };
    }
}
