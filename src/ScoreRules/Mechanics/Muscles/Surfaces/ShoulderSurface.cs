using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Muscles.Surfaces;

/// <summary>
/// Length over plane and elevation of the upper arm, made whole where those two angles are not: an arm that hangs or stands straight up
/// lies in every plane at once, and behind the middle of the body nothing is tabulated.
/// </summary>
/// <remarks>
/// Within 15 degrees of hanging, what the data make of the plane at elevation 0 (up to 5 mm, the fault of the fit) fades into its mean.
/// 15 degrees is the spacing of the tables: no tabulated length but those at elevation 0 changes. Between plane 135, across the chest,
/// and plane 270, backward, the length runs straight from one edge to the other. Above the highest tabulated elevation the length stays
/// as it is there; from 150 up to straight overhead it fades into its mean over planes 0 to 90, through which arms are raised.
/// </remarks>
/// <param name="inner">What the data say from plane -90 to plane 135.</param>
internal sealed class ShoulderSurface(ILengthSurface inner) : ILengthSurface
{
    private const double Fade = ShoulderDomain.Spacing;
    private const double Gap = ShoulderDomain.Back + 360 - ShoulderDomain.Across;

    private readonly double hanging = Mean(inner, ShoulderDomain.Back, ShoulderDomain.Across, 0);

    private readonly double overhead = Mean(inner, 0, 90, ShoulderDomain.Highest);

    /// <inheritdoc/>
    public double LengthAt(double x, double y)
    {
        var known = KnownLengthAt(x, Math.Min(y, ShoulderDomain.HighestElevation(x)));
        return y <= ShoulderDomain.Highest ? known : double.Lerp(known, overhead, Smooth((y - ShoulderDomain.Highest) / (180 - ShoulderDomain.Highest)));
    }

    /// <inheritdoc/>
    public Slope SlopeAt(double x, double y) => KnownSlopeAt(x, Math.Min(y, ShoulderDomain.HighestElevation(x)));

    private static double InGap(double plane) => (plane - ShoulderDomain.Across) / Gap;

    private static double AtBack(double elevation) => Math.Min(elevation, ShoulderDomain.HighestElevation(ShoulderDomain.Back));

    private double KnownLengthAt(double x, double y)
    {
        if (x <= ShoulderDomain.Across)
        {
            return FadedLengthAt(x, y);
        }

        return double.Lerp(FadedLengthAt(ShoulderDomain.Across, y), FadedLengthAt(ShoulderDomain.Back, AtBack(y)), InGap(x));
    }

    private Slope KnownSlopeAt(double x, double y)
    {
        if (x <= ShoulderDomain.Across)
        {
            return FadedSlopeAt(x, y);
        }

        var alongPlane = FadedLengthAt(ShoulderDomain.Back, AtBack(y)) - FadedLengthAt(ShoulderDomain.Across, y);
        var across = FadedSlopeAt(ShoulderDomain.Across, y).Towards(FadedSlopeAt(ShoulderDomain.Back, AtBack(y)), InGap(x));
        return across with { X = alongPlane / Degrees.ToRadians(Gap) };
    }

    private double FadedLengthAt(double plane, double elevation)
    {
        var length = inner.LengthAt(plane, elevation);
        return elevation >= Fade ? length : length - (ShareOfHanging(elevation) * (inner.LengthAt(plane, 0) - hanging));
    }

    private Slope FadedSlopeAt(double plane, double elevation)
    {
        var slope = inner.SlopeAt(plane, elevation);
        if (elevation >= Fade)
        {
            return slope;
        }

        var excess = inner.LengthAt(plane, 0) - hanging;
        return new Slope(
            slope.X - (ShareOfHanging(elevation) * inner.SlopeAt(plane, 0).X),
            slope.Y - (SlopeOfShare(elevation) * excess));
    }

    // 1 for a hanging arm, 0 from 15 degrees on, level at both ends.
    private static double ShareOfHanging(double elevation) => 1 - Smooth(elevation / Fade);

    private static double SlopeOfShare(double elevation)
    {
        var t = elevation / Fade;
        return 6 * t * (t - 1) / Degrees.ToRadians(Fade);
    }

    private static double Smooth(double t) => t * t * (3 - (2 * t));

    private static double Mean(ILengthSurface inner, double from, double to, double elevation) =>
        Enumerable.Range(0, (int)(to - from) + 1).Average(step => inner.LengthAt(from + step, elevation));
}
