namespace ScoreRules.Mechanics.Bodies;

/// <summary>Trigonometry in degrees.</summary>
internal static class Degrees
{
    public static double ToRadians(double degrees) => degrees * (Math.PI / 180);

    public static double FromRadians(double radians) => radians * (180 / Math.PI);

    public static double Sin(double degrees) => Math.Sin(ToRadians(degrees));

    public static double Cos(double degrees) => Math.Cos(ToRadians(degrees));

    public static (double Sin, double Cos) SinCos(double degrees) => Math.SinCos(ToRadians(degrees));

    public static double Asin(double ratio) => FromRadians(Math.Asin(ratio));

    public static double Atan2(double y, double x) => FromRadians(Math.Atan2(y, x));
}
