using System.Runtime.Intrinsics;

namespace ScoreRules.Inference;

/// <summary>The comparisons of numbers.</summary>
internal static class NumberTests
{
    /// <summary>Equal.</summary>
    internal readonly struct Is : INumberTest
    {
        /// <inheritdoc/>
        public static Vector256<double> Holds(Vector256<double> number, Vector256<double> low, Vector256<double> high) => Vector256.Equals(number, low);
    }

    /// <summary>At least as large.</summary>
    internal readonly struct AtLeast : INumberTest
    {
        /// <inheritdoc/>
        public static Vector256<double> Holds(Vector256<double> number, Vector256<double> low, Vector256<double> high) => Vector256.GreaterThanOrEqual(number, low);
    }

    /// <summary>At most as large.</summary>
    internal readonly struct AtMost : INumberTest
    {
        /// <inheritdoc/>
        public static Vector256<double> Holds(Vector256<double> number, Vector256<double> low, Vector256<double> high) => Vector256.LessThanOrEqual(number, low);
    }

    /// <summary>Larger.</summary>
    internal readonly struct MoreThan : INumberTest
    {
        /// <inheritdoc/>
        public static Vector256<double> Holds(Vector256<double> number, Vector256<double> low, Vector256<double> high) => Vector256.GreaterThan(number, low);
    }

    /// <summary>Smaller.</summary>
    internal readonly struct LessThan : INumberTest
    {
        /// <inheritdoc/>
        public static Vector256<double> Holds(Vector256<double> number, Vector256<double> low, Vector256<double> high) => Vector256.LessThan(number, low);
    }

    /// <summary>From the one to the other, both included.</summary>
    internal readonly struct Between : INumberTest
    {
        /// <inheritdoc/>
        public static Vector256<double> Holds(Vector256<double> number, Vector256<double> low, Vector256<double> high) => Vector256.GreaterThanOrEqual(number, low) & Vector256.LessThanOrEqual(number, high);
    }
}
