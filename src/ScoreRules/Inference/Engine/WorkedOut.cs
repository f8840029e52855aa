using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Inference.Engine;

/// <summary>Numbers that a recipe has worked out for all rows; its number is the attribute's index.</summary>
internal sealed class WorkedOut(AttributeDefinition attribute, NumberColumn column) : DerivedFact(attribute.Index)
{
    /// <summary>The attribute made.</summary>
    public AttributeDefinition Attribute { get; } = attribute;

    /// <summary>Its numbers.</summary>
    public NumberColumn Column { get; } = column;
}
