namespace ScoreRules.Statistics.Distributions;

/// <summary>
/// Halves an interval until its ends are neighbouring doubles. Slower than faster-converging methods and never wrong; every root here is
/// of a monotone function, and the last digit matters more than the time.
/// </summary>
internal static class Bisection
{
    /// <summary>The place where the function falls from above 0 to 0 or below.</summary>
    /// <param name="function">A function that falls across the interval.</param>
    /// <param name="lower">Where it is above 0.</param>
    /// <param name="upper">Where it is 0 or below.</param>
    public static double Falling(Func<double, double> function, double lower, double upper)
    {
        while (true)
        {
            var middle = lower + ((upper - lower) / 2);
            if (middle <= lower || middle >= upper)
            {
                return middle;
            }

            if (function(middle) > 0)
            {
                lower = middle;
            }
            else
            {
                upper = middle;
            }
        }
    }
}
