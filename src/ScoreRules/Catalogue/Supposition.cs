using ScoreRules.Language.Binding;

namespace ScoreRules.Catalogue;

/// <summary>Catalogues in which a movement is supposed to have another fact, for questions of the kind "what if".</summary>
public static class Supposition
{
    /// <summary>The catalogue with one fact of one movement replaced, in every target; other movements, those like it too, keep theirs.</summary>
    /// <param name="catalogue">The catalogue.</param>
    /// <param name="movement">One of its movements.</param>
    /// <param name="attribute">What is supposed to be different; neither worked out, derived nor computed.</param>
    /// <param name="value">The value supposed.</param>
    public static MovementCatalogue Suppose(MovementCatalogue catalogue, Movement movement, AttributeDefinition attribute, FactValue value)
    {
        var changed = Suppose(movement, attribute, value);
        return new MovementCatalogue(catalogue.Movements.SetItem(movement.Index, changed));
    }

    /// <summary>The movement with one fact replaced, in every target.</summary>
    /// <param name="movement">The movement.</param>
    /// <param name="attribute">What is supposed to be different; neither worked out, derived nor computed.</param>
    /// <param name="value">The value supposed.</param>
    public static Movement Suppose(Movement movement, AttributeDefinition attribute, FactValue value)
    {
        var supposed = new CatalogueFact(value, FactOrigin.Stated, null, null);
        return movement with
        {
            Facts = movement.Facts.SetItem(attribute.Index, supposed),
            TargetFacts = new TargetFacts(movement.TargetFacts.ByAttribute.RemoveRange(movement.TargetFacts.ByAttribute.Keys.Where(key => key.Attribute == attribute.Index))),
        };
    }
}
