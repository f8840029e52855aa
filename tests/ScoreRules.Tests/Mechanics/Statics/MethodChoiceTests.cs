using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Mechanics.Statics.Choosing;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Mechanics.Statics;

/// <summary>The words of the catalogue lead to the method each movement needs.</summary>
public sealed class MethodChoiceTests
{
    public static TheoryData<string> Names() => [.. GeometryRows.All.Select(row => row["movement"])];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_words_of_a_movement_choose_its_method(string name)
    {
        var row = GeometryRows.All.Single(row => row["movement"] == name);
        var mechanism = GeometryRows.Mechanism(row);
        var movement = GeometryNames.Find(name);
        var traits = new MovementTraits(Word(movement, "movement pattern"), Word(movement, "resistance type"), Word(movement, "line of pull"), Word(movement, "kinetic chain"), mechanism.WorkingJoint, mechanism.Moving)
        {
            BodyPosition = Word(movement, "body position"),
        };
        // The reference names no method where a cam is not recorded; ours then only weighs the limb.
        MethodChoice.Of(traits).ShouldBe(GeometryRows.Method(row["method"]) ?? MethodChoice.Of(traits).ShouldNotBeNull());
    }

    [Fact]
    public void A_pattern_that_no_method_fits_has_none() => MethodChoice.Of(
        new MovementTraits("crawl", "body weight", "gravity", "closed", ScoreRules.Mechanics.Bodies.JointMotion.HipFlexion, [])).ShouldBeNull();

    private static string Word(Movement movement, string attribute)
    {
        AttributeDefinition definition = Judged.Longreach.Ruleset.Attributes.Single(one => one.Name == attribute);
        return definition.Values[movement.Facts[definition.Index].Value.Codes[0]];
    }
}
