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
    // Movements that have another name in the catalogue than in the geometry.
    private static readonly Dictionary<string, string> Renamed = new(StringComparer.Ordinal)
    {
        ["spider curl"] = "chest-supported curl",
        ["seated cable fly"] = "supported cable fly",
        ["cable fly"] = "standing cable fly",
        ["lat pulldown pronated"] = "wide-grip pulldown",
        ["lat pulldown neutral"] = "neutral-grip pulldown",
        ["pulldown behind neck"] = "behind-neck pulldown",
        ["press behind neck"] = "behind-neck press",
        ["rear delt dumbbell raise"] = "bent-over rear-deltoid raise",
        ["chest supported rear raise"] = "chest-supported rear-deltoid raise",
        ["hip extension 45"] = "45-degree hip extension",
        ["hip extension 45 glute"] = "45-degree glute extension",
        ["single arm pressdown"] = "one-arm pressdown",
        ["single arm overhead cable extension"] = "one-arm overhead cable extension",
        ["single arm pulldown"] = "one-arm pulldown",
        ["single leg press"] = "one-leg press",
        ["single leg romanian deadlift"] = "one-leg romanian deadlift",
        ["single leg hip thrust"] = "one-leg hip thrust",
        ["single leg calf raise"] = "one-leg calf raise",
        ["single leg dumbbell calf raise"] = "one-leg dumbbell calf raise",
        ["bent knee single leg calf raise"] = "bent-knee one-leg calf raise",
    };

    public static TheoryData<string> Names() => [.. GeometryRows.All.Select(row => row["movement"])];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_words_of_a_movement_choose_its_method(string name)
    {
        var row = GeometryRows.All.Single(row => row["movement"] == name);
        var mechanism = GeometryRows.Mechanism(row);
        var movement = Find(name.Replace('-', ' '));
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

    private static Movement Find(string name)
    {
        var plain = Renamed.GetValueOrDefault(name, name).Replace('-', ' ');
        return Judged.Longreach.Catalogue.Movements.Single(movement => movement.Name.Replace('-', ' ') == plain);
    }

    private static string Word(Movement movement, string attribute)
    {
        AttributeDefinition definition = Judged.Longreach.Ruleset.Attributes.Single(one => one.Name == attribute);
        return definition.Values[movement.Facts[definition.Index].Value.Codes[0]];
    }
}
