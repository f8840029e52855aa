using ScoreRules.Language.Binding;
using ScoreRules.Mechanics.Facts;
using ScoreRules.Modelling;

namespace ScoreRules.Publishing.Vocabulary;

/// <summary>Derived facts as words: unit and range as rules read them, and what they say.</summary>
internal static class DerivedWords
{
    /// <summary>A derived fact.</summary>
    public static WordEntry Entry(AttributeDefinition attribute)
    {
        var fact = DerivedFacts.Find(attribute.Name);
        return new WordEntry(WordKind.DerivedFact, attribute.Name, $"{Unit(attribute)}{Range(attribute, fact)}") { Description = attribute.Description };
    }

    private static string Unit(AttributeDefinition attribute) => attribute.Unit is { Length: > 0 } unit ? $"a number in {unit}" : "a number";

    private static string Range(AttributeDefinition attribute, DerivedFact? fact)
    {
        var scale = DerivedFactSource.ScaleOf(attribute);
        return (fact?.Low, fact?.High) switch
        {
            ({ } low, { } high) => $", {NumberText.Plain(low * scale)} to {NumberText.Plain(high * scale)}",
            ({ } low, null) => $", {NumberText.Plain(low * scale)} or more",
            _ => "",
        };
    }
}
