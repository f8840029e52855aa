using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>Compares an attribute with numbers or words.</summary>
/// <param name="Attribute">The attribute.</param>
/// <param name="Comparison">How.</param>
/// <param name="Number">The number, or the low end of between; in the attribute's unit.</param>
/// <param name="High">The high end of between.</param>
/// <param name="Codes">The words, as codes of the attribute, rising.</param>
/// <param name="Location">The words that say it.</param>
public sealed record AttributeTest(
    AttributeDefinition Attribute,
    Comparison Comparison,
    double Number,
    double High,
    ImmutableArray<int> Codes,
    SourceLocation Location) : Condition(Location);
