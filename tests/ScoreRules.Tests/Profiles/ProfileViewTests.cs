using ScoreRules.Houses;
using ScoreRules.Language.Binding;
using ScoreRules.Profiles;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Profiles;

public sealed class ProfileViewTests
{
    private static readonly Judgement Elbow = Judge.Run(HouseFolder.Read(Repository.PathOf("rulesets", "longreach")), "Tender elbow");

    private static readonly Judgement Garage = Judge.Run(HouseFolder.Read(Repository.PathOf("rulesets", "longreach")), "quiet garage");

    [Fact]
    public void A_sore_joint_sets_aside_what_loads_it_more_and_says_so_by_movement()
    {
        var personal = View(Elbow, "elbow extensors");
        personal.SetAside.Where(row => row.Kind == SetAsideKind.SoreJoint).Select(row => row.Row.Movement.Name).ShouldContain("overhead cable extension");
        var stress = Elbow.Ruleset.Attributes.Single(attribute => attribute.Name == "elbow stress");
        personal.Ranking.Placements.ShouldAllBe(placement => placement.Row.Movement.Facts[stress.Index].Value.Number <= 1);
    }

    [Fact]
    public void Missing_kit_is_named()
    {
        var aside = View(Elbow, "elbow extensors").SetAside.Single(row => row.Row.Movement.Name == "close-grip bench press");
        (aside.Kind, aside.Detail).ShouldBe((SetAsideKind.Kit, "barbell, press uprights"));
    }

    [Fact]
    public void What_the_profile_avoids_is_told_in_its_own_words() =>
        View(Garage, "hamstrings").SetAside.Concat(View(Garage, "quadriceps").SetAside).Where(row => row.Kind == SetAsideKind.Avoid)
            .ShouldAllBe(row => row.Detail == "set-up is more than 90 s");

    [Fact]
    public void Filtering_changes_no_score_and_no_tier_and_loses_nothing()
    {
        foreach (var whole in Elbow.Rankings)
        {
            var personal = new ProfileView(Elbow.Ruleset, Elbow.Inferred!, Elbow.Profile!).Of(whole);
            (personal.Ranking.Placements.Length + personal.SetAside.Length).ShouldBe(whole.Placements.Length);
            foreach (var placement in personal.Ranking.Placements)
            {
                var before = whole.Of(placement.Row.Movement)!;
                (placement.Score, placement.Tier).ShouldBe((before.Score, before.Tier));
            }
        }
    }

    [Fact]
    public void A_sore_joint_brings_the_referral_above_the_ranking()
    {
        Elbow.Rankings[0].Placements.SelectMany(placement => Elbow.Explainer!.CautionsOf(placement.Row))
            .ShouldContain(caution => caution.Caution.Place == CautionPlace.AboveTheRanking && caution.Caution.Text.StartsWith("See a licensed clinician"));
        Garage.Rankings[0].Placements.SelectMany(placement => Garage.Explainer!.CautionsOf(placement.Row))
            .ShouldNotContain(caution => caution.Caution.Place == CautionPlace.AboveTheRanking);
    }

    [Fact]
    public void An_unknown_profile_is_refused_with_the_nearest_name() =>
        Should.Throw<HouseException>(() => Judge.Run(HouseFolder.Read(Repository.PathOf("rulesets", "longreach")), "tender elbw")).Message.ShouldContain("Did you mean \"tender elbow\"?");

    private static PersonalRanking View(Judgement judgement, string target) => new ProfileView(judgement.Ruleset, judgement.Inferred!, judgement.Profile!).Of(judgement.Target(target));
}
