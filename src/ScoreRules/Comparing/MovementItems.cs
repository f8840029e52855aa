using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Comparing;

/// <summary>Movements as things to compare: each movement, and of those that both houses have, each fact.</summary>
internal static class MovementItems
{
    /// <summary>All movements of a house.</summary>
    /// <param name="ruleset">The house.</param>
    /// <param name="catalogue">Its movements.</param>
    /// <param name="isShared">Whether the other house has a movement too.</param>
    public static IEnumerable<ComparedItem> Of(BoundRuleset ruleset, MovementCatalogue catalogue, Func<string, bool> isShared) =>
        catalogue.Movements.SelectMany(movement => isShared(movement.Name) ? [Item(movement, "", "", movement.Location), .. Facts(ruleset, movement)] : (IEnumerable<ComparedItem>)[Item(movement, "", "", movement.Location)]);

    private static IEnumerable<ComparedItem> Facts(BoundRuleset ruleset, Movement movement) =>
    [
        Item(movement, "trains", Saying.Of(movement.Trains), movement.Location),
        .. movement.Facts.Select((fact, index) => (Fact: fact, Attribute: ruleset.Attributes[index])).Where(pair => pair.Fact.Value.IsKnown)
            .Select(pair => Item(movement, pair.Attribute.Name, Saying.Of(pair.Attribute, pair.Fact.Value), pair.Fact.Location ?? movement.Location)),
        .. movement.TargetFacts.ByAttribute.OrderBy(pair => pair.Key.Attribute).ThenBy(pair => pair.Key.Target, StringComparer.Ordinal)
            .Select(pair => Item(movement, $"{ruleset.Attributes[pair.Key.Attribute].Name} for {pair.Key.Target}", Saying.Of(ruleset.Attributes[pair.Key.Attribute], pair.Value.Value), pair.Value.Location ?? movement.Location)),
        .. movement.Geometry.Select(line => Item(movement, line.Name, Saying.Of(line), line.Location)),
    ];

    private static ComparedItem Item(Movement movement, string what, string says, SourceLocation location) =>
        new(RuleBlock.Movements, $"movement {NameText.Key(movement.Name)} / {NameText.Key(what)}", says, what.Length == 0 ? $"movement \"{movement.Name}\"" : $"movement \"{movement.Name}\": {what}", location)
        {
            Movement = NameText.Key(movement.Name),
        };
}
