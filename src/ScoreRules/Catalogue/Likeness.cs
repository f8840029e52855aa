using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Catalogue;

/// <summary>
/// How alike two movements are, judged by the attributes that count for likeness: exp(-6 x distance), where distance is the
/// mean of the differences in those attributes that are known for both.
/// </summary>
public sealed class Likeness
{
    /// <summary>
    /// How fast likeness falls with distance, without unit: a mean difference of 0.1 leaves 55 % of likeness, one of 0.5 leaves 5 %.
    /// Chosen so that cousins which differ in one or two attributes stay above 50 % and strangers fall below 20 %; frozen.
    /// </summary>
    public const double Steepness = 6;

    private readonly ImmutableArray<AttributeDefinition> compared;

    /// <summary>Keeps those attributes that count for likeness.</summary>
    /// <param name="attributes">All attributes of the house.</param>
    public Likeness(IEnumerable<AttributeDefinition> attributes) => compared = [.. attributes.Where(attribute => attribute.CountsForLikeness)];

    /// <summary>Likeness from 0 (excluded) to 1 (no difference); NaN when no compared attribute is known for both.</summary>
    public double Between(Movement left, Movement right)
    {
        var (sum, count) = (0.0, 0);
        foreach (var attribute in compared.Where(attribute => IsKnown(attribute, left, right)))
        {
            sum += AttributeDifference.Between(attribute, left.Facts[attribute.Index].Value, right.Facts[attribute.Index].Value);
            count++;
        }

        return count == 0 ? double.NaN : Math.Exp(-Steepness * sum / count);
    }

    /// <summary>Names of the attributes that were left aside because one of the two movements does not know them, in the house's order.</summary>
    public ImmutableArray<string> Skipped(Movement left, Movement right) =>
        [.. compared.Where(attribute => !IsKnown(attribute, left, right)).Select(attribute => attribute.Name)];

    /// <summary>The attributes that are known for both and differ, in the house's order.</summary>
    public ImmutableArray<AttributeDefinition> Different(Movement left, Movement right) =>
        [.. compared.Where(attribute => IsKnown(attribute, left, right) && AttributeDifference.Between(attribute, left.Facts[attribute.Index].Value, right.Facts[attribute.Index].Value) > 0)];

    private static bool IsKnown(AttributeDefinition attribute, Movement left, Movement right) =>
        left.Facts[attribute.Index].Value.IsKnown && right.Facts[attribute.Index].Value.IsKnown;
}
