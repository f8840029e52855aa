using System.Runtime.Intrinsics;
using ScoreRules.Catalogue;
using ScoreRules.Language;

namespace ScoreRules.Inference;

/// <summary>A range of numbers, both ends included; NaN is in no range.</summary>
/// <param name="Low">The low end.</param>
/// <param name="High">The high end.</param>
internal readonly record struct NumberRange(double Low, double High)
{
    /// <summary>The numbers that a comparison asks for. Ends are rounded as the numbers they meet.</summary>
    public static NumberRange Of(Comparison comparison, double number, double high)
    {
        var end = NumberColumn.AsCompared(number);
        return comparison switch
        {
            Comparison.AtLeast => new(end, double.PositiveInfinity),
            Comparison.AtMost => new(double.NegativeInfinity, end),
            Comparison.MoreThan => new(Math.BitIncrement(end), double.PositiveInfinity),
            Comparison.LessThan => new(double.NegativeInfinity, Math.BitDecrement(end)),
            Comparison.Between => new(end, NumberColumn.AsCompared(high)),
            Comparison.Is or Comparison.OtherThan => new(end, end),
            _ => new(double.NaN, double.NaN),
        };
    }

    /// <summary>Rows of a column whose numbers lie in the range.</summary>
    public RowSet RowsOf(NumberColumn column)
    {
        var numbers = column.Compared;
        var words = new ulong[RowSet.WordsFor(column.Count)];
        for (var word = 0; word < words.Length; word++)
        {
            words[word] = Inside(numbers.Slice(word * 64, 64));
        }

        return RowSet.FromWords(column.Count, words);
    }

    // A bit for each of 64 numbers, four at a time.
    private ulong Inside(ReadOnlySpan<double> numbers)
    {
        var (low, high) = (Vector256.Create(Low), Vector256.Create(High));
        var bits = 0UL;
        for (var i = 0; i < numbers.Length; i += 4)
        {
            var four = Vector256.Create(numbers.Slice(i, 4));
            var inside = Vector256.GreaterThanOrEqual(four, low) & Vector256.LessThanOrEqual(four, high);
            bits |= (ulong)inside.ExtractMostSignificantBits() << i;
        }

        return bits;
    }
}
