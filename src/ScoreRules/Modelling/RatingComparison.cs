using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Mechanics.Bodies;
using FactValue = ScoreRules.Mechanics.Facts.FactValue;

namespace ScoreRules.Modelling;

/// <summary>A rating beside what mechanics derives for the same thing.</summary>
/// <param name="Attribute">What is rated.</param>
/// <param name="Rated">The rating, in steps of its scale.</param>
/// <param name="Fact">The derived fact.</param>
/// <param name="Derived">The derived value in steps of the same scale.</param>
/// <param name="IsSettled">False where mechanics cannot overrule a coach: for the chest, while the abduction of the upper arm is not stated.</param>
public sealed record RatingComparison(AttributeDefinition Attribute, CatalogueFact Rated, FactValue Fact, double Derived, bool IsSettled)
{
    /// <summary>How many steps the rating lies above the derived value; negative below.</summary>
    public double Above => Rated.Value.Number - Derived;

    /// <summary>Whether they are so far apart that somebody should look again.</summary>
    public bool IsApart => IsSettled && Math.Round(Math.Abs(Above), 9) >= RatedFact.Apart * (Attribute.Scale.High - Attribute.Scale.Low) / 4;

    /// <summary>Those that a movement has, for one target: rated, derived and good for more than a sign.</summary>
    /// <param name="ruleset">The house.</param>
    /// <param name="derived">What mechanics derives.</param>
    public static ImmutableArray<RatingComparison> Of(BoundRuleset ruleset, DerivedMovement derived) =>
        [.. RatedFact.All.Select(rated => Of(ruleset, derived, rated)).OfType<RatingComparison>()];

    private static RatingComparison? Of(BoundRuleset ruleset, DerivedMovement derived, RatedFact rated)
    {
        var attribute = ruleset.Attributes.FirstOrDefault(attribute => attribute.Name == rated.Attribute && attribute.Kind == AttributeKind.Rating);
        if (attribute is null || derived.Find(rated.Fact) is not { CanOrder: true, Value: { } value } fact)
        {
            return null;
        }

        var said = derived.Movement.TargetFacts.Of(attribute.Index, derived.Target) ?? derived.Movement.Facts[attribute.Index];
        var steps = attribute.Scale.Low + (rated.Worth.Of(value) * (attribute.Scale.High - attribute.Scale.Low));
        return said.Value.IsKnown ? new RatingComparison(attribute, said, fact, steps, IsSettledFor(derived)) : null;
    }

    // The chest's length grows mostly with how far the arm is raised to the side.
    private static bool IsSettledFor(DerivedMovement derived) =>
        derived.Facts is { } facts
        && (facts.Profile.Mechanism.Start.Degrees.ContainsKey(JointMotion.ShoulderAbduction) || !facts.Target.Muscles.Any(muscle => muscle.Name.StartsWith("pectoralis", StringComparison.Ordinal)));
}
