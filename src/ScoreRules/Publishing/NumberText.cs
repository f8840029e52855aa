using System.Globalization;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing;

/// <summary>Numbers as they are printed: one decimal on cards and tables, half away from zero, a hyphen for minus.</summary>
internal static class NumberText
{
    /// <summary>Points with one decimal.</summary>
    public static string Points(double points) => double.IsNaN(points) ? "-" : Rounding.Printed(points, 1).ToString("0.0", CultureInfo.InvariantCulture);

    /// <summary>Points with one decimal and a sign; zero without one.</summary>
    public static string Signed(double points)
    {
        var printed = Rounding.Printed(points, 1);
        return double.IsNaN(points) ? "-" : printed == 0 ? "0.0" : printed.ToString("+0.0;-0.0", CultureInfo.InvariantCulture);
    }

    /// <summary>Whole points for sentences, without a sign.</summary>
    public static string Whole(double points) => Rounding.Printed(Math.Abs(points), 0).ToString("0", CultureInfo.InvariantCulture);

    /// <summary>A number as people write it, up to four decimals.</summary>
    public static string Plain(double number) => number.ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>A count.</summary>
    public static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}
