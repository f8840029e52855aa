using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Comparing;

/// <summary>
/// One vocabulary for two houses, so that rules of one can be applied to movements of the other. Attributes of one name and kind become
/// one, with the words of both; others stand side by side, unknown for the movements of the house that lacks them.
/// </summary>
internal sealed class SharedVocabulary
{
    private readonly Dictionary<AttributeDefinition, AttributeDefinition> shared = new(ReferenceEqualityComparer.Instance);

    private SharedVocabulary(BoundRuleset old, BoundRuleset now)
    {
        var all = new List<AttributeDefinition>();
        foreach (var attribute in now.Attributes.Concat(old.Attributes))
        {
            var position = all.FindIndex(other => AreOne(other, attribute));
            if (position < 0)
            {
                all.Add(attribute with { Index = all.Count });
            }
            else
            {
                all[position] = all[position] with { Values = [.. all[position].Values, .. attribute.Values.Where(word => all[position].CodeOf(word) < 0)] };
            }
        }

        Attributes = [.. all];
        foreach (var attribute in now.Attributes.Concat(old.Attributes))
        {
            shared[attribute] = all.Find(other => AreOne(other, attribute))!;
        }
    }

    /// <summary>All attributes; an attribute's index is its position.</summary>
    public ImmutableArray<AttributeDefinition> Attributes { get; }

    /// <summary>The vocabulary of two houses.</summary>
    public static SharedVocabulary Of(BoundRuleset old, BoundRuleset now) => new(old, now);

    /// <summary>An attribute of one of the two houses in the vocabulary of both.</summary>
    public AttributeDefinition Of(AttributeDefinition attribute) => shared[attribute];

    /// <summary>Codes of words, rising.</summary>
    public ImmutableArray<int> Codes(AttributeDefinition attribute, ImmutableArray<int> codes) =>
        codes.IsDefault ? codes : [.. codes.Select(code => Of(attribute).CodeOf(attribute.Values[code])).Order()];

    private static bool AreOne(AttributeDefinition one, AttributeDefinition other) =>
        NameText.Same(one.Name, other.Name) && one.Kind == other.Kind && one.Unit == other.Unit && one.Scale == other.Scale
        && one.IsWorkedOut == other.IsWorkedOut && one.IsDerived == other.IsDerived && one.IsAboutThePerson == other.IsAboutThePerson && one.CountsForLikeness == other.CountsForLikeness;
}
