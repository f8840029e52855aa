using ScoreRules.Mechanics.Facts;
using ScoreRules.Modelling;
using ScoreRules.Publishing.Derivation;

namespace ScoreRules.Publishing.Pictures;

/// <summary>What a picture says in words: its key, and its description for those who cannot see it.</summary>
internal static class PictureWords
{
    /// <summary>How to read the figures.</summary>
    public static string[] Key(string seenFrom, MovementFigures movement, LoadShape shape)
    {
        var figure = movement.Figures[0];
        var pull = figure.Load is null ? "" : figure.Load.HasLever ? " Dashed: line of pull; dotted: its lever on the joint." : " Dashed: line of pull.";
        var pale = figure.Arm.IsStated && figure.Leg.IsStated ? "" : " Pale limbs are not stated.";
        var otherEnd = shape.Lengths.Where(length => length.IsLongAtStart != shape.IsLongAtStart).Select(length => length.Muscle).ToList();
        string[] figures = [$"{seenFrom}. Ring: the working joint.{pull}{pale}"];
        return otherEnd.Count == 0 ? figures : [.. figures, $"Long at the other end: {FactText.Join(otherEnd)}."];
    }

    /// <summary>Why there is no load curve.</summary>
    public static string WhyNoLoad(MovementFacts facts) =>
        facts.Profile.Missing.FirstOrDefault(input => input.StopsTheCurve) is { } input ? $"Load: cannot be worked out; the {input.Name} is not stated." : facts.Profile.Curve is not null ? "Load: helps the target at every angle." : "Load: cannot be worked out.";

    /// <summary>The description.</summary>
    public static string Description(DerivedMovement derived, MovementFacts facts, string seenFrom)
    {
        var shape = LoadShape.Of(facts);
        var mechanism = facts.Profile.Mechanism;
        var range = $"{DeriveWords.Motion(mechanism.WorkingJoint)} from {DeriveWords.Number(shape.Angles[0], 0)}° to {DeriveWords.Number(shape.Angles[^1], 0)}°";
        return $"{seenFrom}: three stick figures at the start, in the middle and at the end, {range}.{Load(facts, shape)}{Length(derived, facts, shape)}";
    }

    private static string Load(MovementFacts facts, LoadShape shape) => shape switch
    {
        { IsAssumed: true } => " The load is assumed to be even.",
        { Load: null } => $" {WhyNoLoad(facts)}",
        _ => $" The load on the joint peaks at {DeriveWords.Number(facts["angle of peak moment"].Value!.Value, 0)}° and is {DeriveWords.Number(100 * Math.Clamp(shape.Load.Value[0], 0, 1), 0)} % of the peak at the start and {DeriveWords.Number(100 * Math.Clamp(shape.Load.Value[^1], 0, 1), 0)} % at the end.",
    };

    private static string Length(DerivedMovement derived, MovementFacts facts, LoadShape shape) => shape.MeanLength is not { } length
        ? ""
        : $" The {derived.Target.Name} go from {DeriveWords.Number(100 * length[0], 0)} % to {DeriveWords.Number(100 * length[^1], 0)} % of their length range; the lengthened third is at the {(shape.IsLongAtStart ? "start" : "end")}.{Loaded(facts)}";

    private static string Loaded(MovementFacts facts) =>
        facts["loaded length in the long third"] is { Value: { } value } fact ? $" Loaded length there: {DeriveWords.Value(fact.Fact, value)}{(fact.IsAssumed ? ", even load assumed" : "")}." : "";
}
