using ScoreRules.Language.Binding;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Modelling;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Modelling;

/// <summary>The words of rule text and the terms of mechanics are the same things.</summary>
public sealed class VocabularyOfMotionTests
{
    [Fact]
    public void Each_motion_has_a_word_and_each_word_a_motion()
    {
        MotionNames.Positive.Length.ShouldBe(Enum.GetValues<JointMotion>().Length);
        foreach (var motion in Enum.GetValues<JointMotion>())
        {
            Motions.WordOf(motion).Replace("-", "", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal).ShouldBe(motion.ToString(), StringCompareShould.IgnoreCase);
            Motions.Of(Motions.WordOf(motion)).ShouldBe(motion);
        }
    }

    [Fact]
    public void Opposite_words_mean_the_same_motion_the_other_way()
    {
        MotionNames.Find("Shoulder  extension").ShouldBe(("shoulder flexion", -1));
        MotionNames.Find("trunk recline").ShouldBe(("trunk pitch", -1));
        MotionNames.Find("ankle plantarflexion").ShouldBe(("ankle dorsiflexion", -1));
        MotionNames.Find("").ShouldBeNull();
    }

    [Fact]
    public void Each_muscle_whose_actions_are_known_is_a_muscle_of_the_shared_vocabulary()
    {
        var names = Judged.Longreach.Ruleset.Muscles.Select(muscle => muscle.Info.Name!).ToList();
        MuscleActions.Muscles.Except(names).ShouldBeEmpty();
    }

    /// <summary>A muscle moves only joints that the vocabulary says it crosses.</summary>
    [Fact]
    public void No_muscle_turns_a_joint_that_it_does_not_cross()
    {
        foreach (var muscle in Judged.Longreach.Ruleset.Muscles)
        {
            foreach (var (motion, _) in MuscleActions.Of(muscle.Info.Name!))
            {
                muscle.Crosses.ShouldContain(Motions.WordOf(motion).Split(' ')[0], muscle.Info.Name);
            }
        }
    }
}
