using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Catalogue;

/// <summary>
/// How far what is believed of one movement carries over to another: exp(-6 x distance) over all attributes that count for likeness, where
/// an attribute that either of the two lacks counts as wholly unlike. So it never exceeds <see cref="Likeness"/>, and all of them together
/// are correlations of one set of things: each difference is a distance that can be laid out in sums of absolute values, and exp(-distance)
/// of such a distance is positive definite (Schoenberg 1938, Transactions of the American Mathematical Society 44:522).
/// </summary>
public sealed class Kinship
{
    // Even two movements that differ in nothing recorded are not one movement: this share of their doubt is their own.
    private const double OwnShare = 0.01;

    private readonly ImmutableArray<AttributeDefinition> compared;

    /// <summary>Keeps those attributes that count for likeness.</summary>
    /// <param name="attributes">All attributes of the house.</param>
    public Kinship(IEnumerable<AttributeDefinition> attributes) => compared = [.. attributes.Where(attribute => attribute.CountsForLikeness)];

    /// <summary>From 0 to 0.99; 0 when no attribute counts for likeness.</summary>
    public double Between(Movement left, Movement right)
    {
        if (compared.IsEmpty)
        {
            return 0;
        }

        var distance = compared.Average(attribute => Difference(attribute, left.Facts[attribute.Index].Value, right.Facts[attribute.Index].Value));
        return (1 - OwnShare) * Math.Exp(-Likeness.Steepness * distance);
    }

    private static double Difference(AttributeDefinition attribute, FactValue left, FactValue right) =>
        left.IsKnown && right.IsKnown ? AttributeDifference.Between(attribute, left, right) : 1;
}
