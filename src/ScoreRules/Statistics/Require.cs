using System.Globalization;

namespace ScoreRules.Statistics;

/// <summary>The checks that every entry of the statistics makes first; each returns what it was given, or refuses it in plain words.</summary>
internal static class Require
{
    public static double Finite(double value, string what) =>
        double.IsFinite(value) ? value : throw new StatisticsInputException($"{what} must be a number, but is {Shown(value)}.");

    public static double Positive(double value, string what) =>
        Finite(value, what) > 0 ? value : throw new StatisticsInputException($"{what} must be above 0, but is {Shown(value)}.");

    public static double NotNegative(double value, string what) =>
        Finite(value, what) >= 0 ? value : throw new StatisticsInputException($"{what} must not be below 0, but is {Shown(value)}.");

    /// <summary>Strictly between 0 and 1, such as a level of confidence.</summary>
    public static double Share(double value, string what) =>
        value is > 0 and < 1 ? value : throw new StatisticsInputException($"{what} must lie between 0 and 1, but is {Shown(value)}.");

    public static double Correlation(double value, string what) =>
        value is > -1 and < 1 ? value : throw new StatisticsInputException($"{what} must lie between -1 and 1, but is {Shown(value)}.");

    public static int AtLeast(int value, int least, string what) =>
        value >= least ? value : throw new StatisticsInputException($"{what} must be at least {Shown(least)}, but is {Shown(value)}.");

    public static int Index(int index, int count, string what) =>
        index >= 0 && index < count ? index : throw new StatisticsInputException($"{what} must be a place from 0 to {Shown(count - 1)}, but is {Shown(index)}.");

    public static void SameLength(int first, int second, string what)
    {
        if (first != second)
        {
            throw new StatisticsInputException($"{what} must be equally many, but are {Shown(first)} and {Shown(second)}.");
        }
    }

    private static string Shown(double value) => value.ToString("G6", CultureInfo.InvariantCulture);
}
