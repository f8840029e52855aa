using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Publishing.Vocabulary;

/// <summary>Attributes and kit as words.</summary>
internal static class AttributeWords
{
    /// <summary>An attribute with what it takes.</summary>
    public static WordEntry Entry(AttributeDefinition attribute, ImmutableArray<MuscleDefinition> muscles)
    {
        var ofMuscles = attribute.Kind == AttributeKind.SomeOf && !attribute.Values.IsEmpty && attribute.Values.Length == muscles.Length && attribute.Values[0] == muscles[0].Info.Name;
        return new WordEntry(WordKind.Attribute, attribute.Name, $"{Takes(attribute, ofMuscles)}{Source(attribute)}")
        {
            Description = attribute.Description,
            Values = ofMuscles ? [] : attribute.Values,
            Steps = attribute.Anchors,
            Synonyms = attribute.Synonyms,
            Location = attribute.Info.Location.Source.Text.Length == 0 ? null : attribute.Info.Location,
        };
    }

    /// <summary>The pieces of kit: the values of the attribute that says what a movement needs.</summary>
    public static IEnumerable<WordEntry> Kit(AttributeDefinition equipment) =>
        equipment.Values.Select(value => new WordEntry(WordKind.Kit, value, $"a value of {equipment.Name}") { Location = equipment.Info.Location });

    private static string Takes(AttributeDefinition attribute, bool ofMuscles) => attribute.Kind switch
    {
        AttributeKind.Rating => $"rated {NumberText.Plain(attribute.Scale.Low)} to {NumberText.Plain(attribute.Scale.High)}",
        AttributeKind.Measure => attribute.Unit is { Length: > 0 } unit ? $"a number in {unit}" : "a number",
        AttributeKind.OneOf => "one of a list",
        _ => ofMuscles ? "some of the muscles" : "some of a list",
    };

    private static string Source(AttributeDefinition attribute) =>
        attribute.IsWorkedOut ? ", worked out" : attribute.IsAboutThePerson ? ", about the person" : "";
}
