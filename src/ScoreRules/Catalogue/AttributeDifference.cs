using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Catalogue;

/// <summary>How far two known values of one attribute lie apart, from 0 (the same) to 1.</summary>
internal static class AttributeDifference
{
    private const double WidestAngle = 180;

    /// <summary>The difference; the same in both directions.</summary>
    public static double Between(AttributeDefinition attribute, FactValue left, FactValue right) => attribute.Kind switch
    {
        AttributeKind.OneOf => left.Codes.SequenceEqual(right.Codes) ? 0 : 1,
        AttributeKind.SomeOf => OfLists(left.Codes, right.Codes),
        AttributeKind.Rating => Share(left.Number, right.Number, attribute.Scale.High - attribute.Scale.Low),
        _ => OfMeasures(left.Number, right.Number, attribute.Unit),
    };

    // One minus the Jaccard index: the share of all words of the two lists that only one of them holds.
    private static double OfLists(ImmutableArray<int> left, ImmutableArray<int> right)
    {
        var both = left.Intersect(right).Count();
        var all = left.Union(right).Count();
        return all == 0 ? 0 : 1 - ((double)both / all);
    }

    // Angles have a natural scale. Other measures have none, so their difference is taken relative to the larger of the two
    // (in size, without sign): 20 s and 40 s lie as far apart as 1 kg and 2 kg.
    private static double OfMeasures(double left, double right, string? unit) =>
        Share(left, right, unit == "°" ? WidestAngle : Math.Max(Math.Abs(left), Math.Abs(right)));

    private static double Share(double left, double right, double scale)
    {
        var difference = Math.Abs(left - right);
        return difference == 0 ? 0 : Math.Min(1, difference / scale);
    }
}
