using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Mechanics.Bodies;
using ScoreRules.Mechanics.Facts;
using ScoreRules.Modelling;
using ScoreRules.Publishing.Derivation;
using FactValue = ScoreRules.Mechanics.Facts.FactValue;

namespace ScoreRules.Publishing.Json;

/// <summary>What mechanics derives, in the parts of the JSON form.</summary>
internal static class DeriveParts
{
    /// <summary>Whose body.</summary>
    public static PersonPart Person(BoundRuleset ruleset, Person person) =>
        new(person.MassKilograms, person.StatureMetres, person.Sex == Sex.Female ? "female" : "male", ruleset.House?.Person is null ? "assumed" : "stated");

    /// <summary>Each number used.</summary>
    public static ImmutableArray<UsedPart> Used(MovementFacts facts) =>
        [.. InputText.Of(facts).Select(input => new UsedPart(input.Name, input.Value, input.Unit, DeriveWords.Origin(input.Origin)))];

    /// <summary>The facts of the target, then those of its muscles.</summary>
    public static ImmutableArray<DerivedFactPart> Facts(MovementFacts facts, ImmutableArray<MuscleFacts> muscles) =>
        [.. facts.Values.Select(value => Fact(value, null)), .. muscles.SelectMany(muscle => muscle.Values.Select(value => Fact(value, muscle.Muscle)))];

    /// <summary>Load and lengths.</summary>
    public static CurvePart Curve(LoadShape shape) => new(
        shape.Angles, shape.Moments,
        new SortedDictionary<string, ImmutableArray<double>>(shape.Lengths.ToDictionary(length => length.Muscle, length => length.Lengths), StringComparer.Ordinal),
        shape.IsLongAtStart ? "first" : "last");

    /// <summary>A rating beside the derived value.</summary>
    public static RatedPart Rated(RatingComparison comparison) => new(
        comparison.Attribute.Name, comparison.Rated.Value.Number, comparison.Fact.Fact.Name, comparison.Derived, comparison.IsApart,
        comparison.Rated.Location?.Path, comparison.Rated.Location?.Line);

    /// <summary>What is missing.</summary>
    public static ImmutableArray<MissingPart> Missing(DerivedMovement derived) => derived.Facts is not { } facts
        ? [new MissingPart(MissingText.Model(derived), [.. DerivedFacts.All.Select(fact => fact.Name)])]
        :
        [
            .. facts.Profile.Missing.Where(input => !input.StopsTheCurve).Select(input => new MissingPart($"{input.Name}: {input.Gain}", [])),
            .. facts.Values.Where(value => value.Value is null).GroupBy(value => string.Join(' ', value.Missing), StringComparer.Ordinal)
                .Select(reason => new MissingPart(reason.Key, [.. reason.Select(value => value.Fact.Name)])),
        ];

    private static DerivedFactPart Fact(FactValue value, string? muscle) => new(
        value.Fact.Name, muscle, value.Value, value.Interval?.Low, value.Interval?.High, value.Fact.Unit, value.Grade is { } grade ? DeriveWords.Grade(grade) : null,
        value.Value is null ? "not computable" : value.IsAssumed ? "derived, even load assumed" : "derived");
}
