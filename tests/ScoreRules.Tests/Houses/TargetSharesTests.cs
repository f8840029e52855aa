using System.Globalization;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Houses;

public sealed class TargetSharesTests
{
    /// <summary>Calf muscle volumes: Front Physiol 2019;10:1299 (older women), as in the reference file. Parts are whole percents.</summary>
    [Fact]
    public void Parts_of_the_calves_follow_published_muscle_volumes()
    {
        var calves = Judged.Longreach.Ruleset.Targets.Single(target => target.Name == "calves");
        foreach (var row in ReferenceTable.Rows("muscle-volumes-calf.csv"))
        {
            var published = double.Parse(row["volumeCm3"], CultureInfo.InvariantCulture) / double.Parse(row["wholeCm3"], CultureInfo.InvariantCulture);
            calves.Muscles.Single(muscle => muscle.Muscle == row["muscle"]).Share.ShouldBe(published, 0.005);
        }
    }

    /// <summary>
    /// A whole-calf result rebuilt from its regions with those shares: 5.6 and 2.1 % (Kinoshita et al. 2023, Front Physiol
    /// 14:1272106: lateral 12.4 and 1.7, medial 9.2 and 0.6, soleus 2.1 and 2.9 %).
    /// </summary>
    [Fact]
    public void Shares_turn_regional_growth_into_the_published_whole()
    {
        var shares = Judged.Longreach.Ruleset.Targets.Single(target => target.Name == "calves").Muscles.ToDictionary(muscle => muscle.Muscle, muscle => muscle.Share);
        double Whole(double lateral, double medial, double soleus) =>
            (shares["gastrocnemius lateral head"] * lateral) + (shares["gastrocnemius medial head"] * medial) + (shares["soleus"] * soleus);

        Whole(12.4, 9.2, 2.1).ShouldBe(5.6, 0.05);
        Whole(1.7, 0.6, 2.9).ShouldBe(2.1, 0.05);
    }
}
