using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace ScoreRules.Statistics.Solving;

/// <summary>
/// The inner product of two rows, in vectors of a fixed width of four: the sum is made in the same order on every machine, whatever its
/// registers, so that the last digit does not depend on the machine.
/// </summary>
internal static class InnerProduct
{
    private static readonly int Width = Vector256<double>.Count;

    public static double Of(ReadOnlySpan<double> first, ReadOnlySpan<double> second)
    {
        ref var a = ref MemoryMarshal.GetReference(first);
        ref var b = ref MemoryMarshal.GetReference(second);
        var (one, two) = (Vector256<double>.Zero, Vector256<double>.Zero);
        var i = 0;
        for (; i <= first.Length - (2 * Width); i += 2 * Width)
        {
            one += Vector256.LoadUnsafe(ref a, (nuint)i) * Vector256.LoadUnsafe(ref b, (nuint)i);
            two += Vector256.LoadUnsafe(ref a, (nuint)(i + Width)) * Vector256.LoadUnsafe(ref b, (nuint)(i + Width));
        }

        var sum = Vector256.Sum(one + two);
        for (; i < first.Length; i++)
        {
            sum += first[i] * second[i];
        }

        return sum;
    }

    /// <summary>Adds a multiple of one row to another.</summary>
    public static void AddScaled(Span<double> target, ReadOnlySpan<double> row, double factor)
    {
        ref var t = ref MemoryMarshal.GetReference(target);
        ref var r = ref MemoryMarshal.GetReference(row);
        var i = 0;
        for (; i <= target.Length - Width; i += Width)
        {
            (Vector256.LoadUnsafe(ref t, (nuint)i) + (Vector256.LoadUnsafe(ref r, (nuint)i) * factor)).StoreUnsafe(ref t, (nuint)i);
        }

        for (; i < target.Length; i++)
        {
            target[i] += row[i] * factor;
        }
    }
}
