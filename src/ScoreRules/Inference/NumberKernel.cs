using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using ScoreRules.Catalogue;

namespace ScoreRules.Inference;

/// <summary>Compares a whole column with a number, four rows in one instruction where the processor can, 64 rows to a word of bits.</summary>
internal static class NumberKernel
{
    private const int RowsPerWord = 64;

    /// <summary>The rows for which the comparison holds.</summary>
    public static RowSet Where<TTest>(double[] column, double low, double high)
        where TTest : INumberTest
    {
        var words = RowSet.WordsFor(column.Length);
        var (lows, highs) = (Vector256.Create(low), Vector256.Create(high));
        var whole = column.Length / RowsPerWord;
        for (var word = 0; word < whole; word++)
        {
            words[word] = Bits<TTest>(column.AsSpan(word * RowsPerWord, RowsPerWord), lows, highs);
        }

        if (whole < words.Length)
        {
            // Rows behind the last one are unknown, so that nothing holds there.
            Span<double> rest = stackalloc double[RowsPerWord];
            rest.Fill(double.NaN);
            column.AsSpan(whole * RowsPerWord).CopyTo(rest);
            words[whole] = Bits<TTest>(rest, lows, highs);
        }

        return RowSet.FromWords(words, column.Length);
    }

    private static ulong Bits<TTest>(ReadOnlySpan<double> block, Vector256<double> low, Vector256<double> high)
        where TTest : INumberTest
    {
        var lanes = MemoryMarshal.Cast<double, Vector256<double>>(block);
        var bits = 0UL;
        for (var i = 0; i < lanes.Length; i++)
        {
            bits |= (ulong)TTest.Holds(lanes[i], low, high).ExtractMostSignificantBits() << (i * Vector256<double>.Count);
        }

        return bits;
    }
}
