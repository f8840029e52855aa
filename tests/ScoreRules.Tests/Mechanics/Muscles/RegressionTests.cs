using System.Text.RegularExpressions;
using ScoreRules.Mechanics.Bodies;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Muscles;

/// <summary>Published formulas (regressions.csv), evaluated here from their text, beside our moment arms and length changes. The bands are our own choice.</summary>
public sealed partial class RegressionTests
{
    private const double ShankMillimetres = 430;

    // Ours is another model with other attachments; brachioradialis is fitted to this very formula, so that row checks our reading of it only.
    [Theory]
    [InlineData("biceps", "biceps long", 10, 130, 12)]
    [InlineData("brachialis", "brachialis", 10, 130, 7)]
    [InlineData("triceps", "triceps lateral", 10, 130, 4)]
    [InlineData("brachioradialis", "brachioradialis", 15, 115, 4)]
    public void Moment_arms_of_the_elbow_follow_Pigeon(string muscle, string part, int from, int to, double millimetres)
    {
        for (var elbow = from; elbow <= to; elbow += 5)
        {
            var theirs = 10 * Value("Pigeon 1996", muscle, 'a', elbow * Math.PI / 180);
            var ours = 1000 * ModelPart.Named(part).MomentArmAbout(JointMotion.ElbowFlexion, ModelPart.Posture((JointMotion.ElbowFlexion, elbow)))!.Value.Metres!.Value;
            ours.ShouldBe(theirs, millimetres, $"elbow {elbow}");
        }
    }

    [Theory]
    [InlineData("gasmed", 0.15)]
    [InlineData("gaslat", 0.15)]
    [InlineData("soleus", 0.20)]
    public void Length_gained_at_the_ankle_follows_Grieve(string part, double share) =>
        Gain(part, JointMotion.AnkleDorsiflexion, -30, 20).ShouldBe(ByGrieve("gastrocnemius+soleus, ankle part", 'A', 60, 110), share * 42.5);

    [Fact]
    public void Length_lost_at_the_knee_is_up_to_a_quarter_more_than_Grieve_gives()
    {
        var theirs = ByGrieve("gastrocnemius, knee part", 'K', 0, 90);
        (Gain("gasmed", JointMotion.KneeFlexion, 0, 90) / theirs).ShouldBeInRange(1.0, 1.25);
        (Gain("gaslat", JointMotion.KneeFlexion, 0, 90) / theirs).ShouldBeInRange(1.0, 1.25);
    }

    [Theory]
    [InlineData("gastrocnemius medial", "gasmed")]
    [InlineData("gastrocnemius lateral", "gaslat")]
    [InlineData("soleus", "soleus")]
    public void Length_gained_at_the_ankle_is_less_than_Hawkins_and_Hull_give_but_within_a_quarter(string muscle, string part)
    {
        var theirs = ShankMillimetres * (Value("Hawkins & Hull 1990", muscle, 'A', 110) - Value("Hawkins & Hull 1990", muscle, 'A', 60));
        (Gain(part, JointMotion.AnkleDorsiflexion, -30, 20) / theirs).ShouldBeInRange(0.75, 1.0);
    }

    [Fact]
    public void The_formulas_are_read_as_they_stand()
    {
        Value("Pigeon 1996", "biceps", 'a', 0).ShouldBe(1.963);
        Value("Pigeon 1996", "biceps", 'a', 1).ShouldBe(1.963 - 1.44 + 3.031 + 0.887 - 1.418 + 0.285, 1e-12);
        Value("Hawkins & Hull 1990", "soleus", 'A', 100).ShouldBe(0.563 + 0.193, 1e-12);
    }

    private static double Gain(string part, JointMotion motion, double from, double to) =>
        1000 * (ModelPart.Named(part).LengthAt(ModelPart.Posture((motion, to))).Metres - ModelPart.Named(part).LengthAt(ModelPart.Posture((motion, from))).Metres);

    private static double ByGrieve(string muscle, char variable, double from, double to) =>
        ShankMillimetres / 100 * (Value("Grieve 1978", muscle, variable, to) - Value("Grieve 1978", muscle, variable, from));

    // Sum of the terms without a letter and of those with the wanted letter.
    private static double Value(string name, string muscle, char variable, double at)
    {
        var formula = ModelPart.Rows("regressions").Single(row => row["name"] == name && row["muscle"] == muscle)["formula"];
        return Terms().Matches(formula).Sum(term => ModelPart.Number(term.Groups["factor"].Value) * (term.Groups["letter"].Value switch
        {
            "" => 1,
            var letter when letter[0] == variable => Math.Pow(at, term.Groups["power"].Success ? ModelPart.Number(term.Groups["power"].Value) : 1),
            _ => 0,
        }));
    }

    [GeneratedRegex(@"(?<factor>[+-]?[\d.]+)(?<letter>[A-Za-z]?)(\^(?<power>\d))?", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Terms();
}
