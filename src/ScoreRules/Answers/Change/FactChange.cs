using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.Change;

/// <summary>One fact of a movement supposed to be different.</summary>
/// <param name="Attribute">What is different; neither worked out, derived nor about a person.</param>
/// <param name="From">The fact now.</param>
/// <param name="To">The value supposed.</param>
public sealed record FactChange(AttributeDefinition Attribute, CatalogueFact From, FactValue To)
{
    private const double StepsOfAMeasure = 4;

    /// <summary>
    /// How large the change is, in steps, so that small ones are told first: rating steps; words that come or go; for a measure four steps
    /// for its whole size. A fact that is not recorded changes by one step.
    /// </summary>
    public double Size { get; } = SizeOf(Attribute, From.Value, To);

    /// <summary>Whether a gym can arrange it.</summary>
    public bool GymCanChange => Arrangeable.Contains(Attribute);

    private static double SizeOf(AttributeDefinition attribute, FactValue from, FactValue to)
    {
        if (!from.IsKnown)
        {
            return 1;
        }

        return attribute.Kind switch
        {
            AttributeKind.Rating => Math.Abs(to.Number - from.Number),
            AttributeKind.Measure => StepsOfAMeasure * Math.Abs(to.Number - from.Number) / Math.Max(Math.Abs(to.Number), Math.Abs(from.Number)),
            AttributeKind.OneOf => 1,
            _ => from.Codes.Except(to.Codes).Count() + to.Codes.Except(from.Codes).Count(),
        };
    }
}
