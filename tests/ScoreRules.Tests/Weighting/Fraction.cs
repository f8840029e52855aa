using System.Globalization;

namespace ScoreRules.Tests.Weighting;

/// <summary>Numbers written as fractions: "11/18", "9".</summary>
internal static class Fraction
{
    public static double Of(string written)
    {
        var parts = written.Split('/');
        var above = double.Parse(parts[0], CultureInfo.InvariantCulture);
        return parts.Length == 1 ? above : above / double.Parse(parts[1], CultureInfo.InvariantCulture);
    }
}
