using System.Numerics;

namespace ScoreRules.Statistics.Draws;

/// <summary>
/// A generator of random numbers that is the same everywhere and for good: xoshiro256** (Blackman and Vigna 2021, ACM Transactions on
/// Mathematical Software 47:36), its state filled from one number by SplitMix64 (Steele, Lea and Flood 2014, OOPSLA). Written from the
/// published description; the generator of the platform promises no fixed sequence.
/// </summary>
public sealed class Generator
{
    private ulong s0;
    private ulong s1;
    private ulong s2;
    private ulong s3;
    private double spare = double.NaN;

    /// <summary>Starts a sequence.</summary>
    /// <param name="seed">Which sequence; any number.</param>
    public Generator(ulong seed)
    {
        s0 = SplitMix(ref seed);
        s1 = SplitMix(ref seed);
        s2 = SplitMix(ref seed);
        s3 = SplitMix(ref seed);
    }

    internal Generator(ulong s0, ulong s1, ulong s2, ulong s3) => (this.s0, this.s1, this.s2, this.s3) = (s0, s1, s2, s3);

    /// <summary>64 random bits.</summary>
    public ulong NextBits()
    {
        var result = BitOperations.RotateLeft(s1 * 5, 7) * 9;
        var shifted = s1 << 17;
        s2 ^= s0;
        s3 ^= s1;
        s1 ^= s2;
        s0 ^= s3;
        s2 ^= shifted;
        s3 = BitOperations.RotateLeft(s3, 45);
        return result;
    }

    /// <summary>A number from 0 to 1, 1 not included, in steps of 2^-53.</summary>
    public double NextUniform() => (NextBits() >> 11) * (1.0 / (1UL << 53));

    /// <summary>An exponential number with mean 1, by inversion.</summary>
    public double NextExponential() => -Math.Log(1 - NextUniform());

    /// <summary>A standard normal number, by the polar method (Marsaglia and Bray 1964, SIAM Review 6:260).</summary>
    public double NextNormal()
    {
        if (!double.IsNaN(spare))
        {
            var kept = spare;
            spare = double.NaN;
            return kept;
        }

        double u, v, square;
        do
        {
            u = (2 * NextUniform()) - 1;
            v = (2 * NextUniform()) - 1;
            square = (u * u) + (v * v);
        }
        while (square is >= 1 or 0);

        var scale = Math.Sqrt(-2 * Math.Log(square) / square);
        spare = v * scale;
        return u * scale;
    }

    /// <summary>A gamma number with scale 1 (Marsaglia and Tsang 2000, ACM Transactions on Mathematical Software 26:363; below shape 1 by their power of a uniform number).</summary>
    /// <param name="shape">Above 0.</param>
    /// <exception cref="StatisticsInputException">A shape that is not above 0.</exception>
    public double NextGamma(double shape)
    {
        if (!(shape >= 1))
        {
            Require.Positive(shape, "The shape of a gamma distribution");
            return NextGamma(shape + 1) * Math.Pow(1 - NextUniform(), 1 / shape);
        }

        var d = shape - (1.0 / 3);
        var c = 1 / Math.Sqrt(9 * d);
        while (true)
        {
            var x = NextNormal();
            var v = 1 + (c * x);
            v = v * v * v;
            var u = 1 - NextUniform();
            if (v > 0 && (u < 1 - (0.0331 * x * x * x * x) || Math.Log(u) < (x * x / 2) + (d * (1 - v + Math.Log(v)))))
            {
                return d * v;
            }
        }
    }

    internal static ulong SplitMix(ref ulong state)
    {
        state += 0x9E3779B97F4A7C15;
        var z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
