using ScoreRules.Answers;
using ScoreRules.Answers.Sore;
using ScoreRules.Houses;
using ScoreRules.Language;
using ScoreRules.Publishing;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Answers;

public sealed class SoreTests
{
    [Fact]
    public void The_cost_the_cousin_and_what_pays_are_what_a_pencil_finds()
    {
        var finding = Quayside.Ask<SoreAnswer>("what a sore elbow costs").Answer.Findings.Single(finding => finding.Before.Target.Name == "arms");
        finding.After.SetAside.Select(row => row.Row.Movement.Name).ShouldBe(["both", "long"]);
        (finding.First!.Row.Movement.Name, finding.Left!.Row.Movement.Name, finding.First.Score - finding.Left.Score).ShouldBe(("both", "steady", 30));
        finding.Payers.Select(reason => $"{reason.Name} {reason.Points:+0;-0}").ShouldBe(["far +30", "both at once +10", "firm -10"]);

        // Reach one of four steps apart, handle the same: a mean distance of 0.125.
        finding.Cousin!.Row.Movement.Name.ShouldBe("plain");
        finding.Likeness.ShouldBe(Math.Exp(-6 * 0.125), 1e-12);
    }

    [Fact]
    public void The_referral_stands_first_and_nothing_is_called_safe()
    {
        var (answer, judgement) = Quayside.Ask<SoreAnswer>("what a sore elbow costs");
        var text = new AnswerText(judgement).Print([answer]);
        text.IndexOf("First           Ask somebody", StringComparison.Ordinal).ShouldBeInRange(1, text.IndexOf("Arms:", StringComparison.Ordinal));
        text.ShouldContain("lower in this flag");
        text.ShouldContain("Education, not medical advice.");
        text.ShouldNotContain("safe", Case.Insensitive);
        AnswerJson.Print(judgement, [answer]).ShouldContain("Ask somebody who may say so first.");
    }

    [Fact]
    public void A_joint_of_a_profile_is_kept_beside_the_one_asked_about()
    {
        var house = Judge.Run(HouseFolder.Read(Repository.PathOf("rulesets", "longreach")).WithQuestion("what a sore wrist costs"), "tender elbow");
        var answer = (SoreAnswer)Answerer.Answer(house, house.Ruleset.Questions.Single(one => one.Kind == QuestionKind.SoreJoint), house.Rankings);
        answer.Anew!.Profile!.Sore.Select(sore => sore.Joint).ShouldBe(["elbow", "wrist"]);
    }
}
