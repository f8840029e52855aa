using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding;

/// <summary>One step of a recipe.</summary>
/// <param name="Operation">What it does.</param>
/// <param name="Number">A fixed operand in the recipe's unit; NaN when an attribute is read.</param>
/// <param name="Attribute">The attribute read, or null.</param>
/// <param name="Condition">Where it is done; null means everywhere.</param>
/// <param name="Location">Where it stands.</param>
public sealed record RecipeStep(RecipeOperation Operation, double Number, AttributeDefinition? Attribute, Condition? Condition, SourceLocation Location);
