namespace ScoreRules.Tiering;

/// <summary>How numbers are compared and printed, so that the last bit of a sum never decides.</summary>
public static class Rounding
{
    /// <summary>A value as it is compared: rounded to 1e-9.</summary>
    public static double Compared(double value) => Math.Round(value, 9, MidpointRounding.AwayFromZero);

    /// <summary>A value as it is printed: half away from zero, after rounding to 1e-9; never minus zero.</summary>
    /// <param name="value">The value.</param>
    /// <param name="decimals">Digits behind the point, 0 to 9.</param>
    public static double Printed(double value, int decimals)
    {
        var rounded = (double)Math.Round((decimal)Compared(value), decimals, MidpointRounding.AwayFromZero);
        return rounded == 0 ? 0 : rounded;
    }
}
