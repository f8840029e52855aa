using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Muscles.Surfaces;

/// <summary>
/// Directions of the upper arm for which shoulder muscles are tabulated: planes from backward (-90) to across the chest (135), elevation
/// up to 150, behind the side less: 60 backward, rising evenly to 150 at plane -45. What lies outside is told here and bridged by
/// <see cref="ShoulderSurface"/>.
/// </summary>
/// <param name="plane">The planes of the part.</param>
/// <param name="elevation">Its elevations.</param>
internal sealed class ShoulderDomain(CoordinateRange plane, CoordinateRange elevation) : ILengthDomain
{
    /// <summary>The plane backward, degrees.</summary>
    public const double Back = -90;

    /// <summary>The last plane across the chest, degrees.</summary>
    public const double Across = 135;

    /// <summary>Highest tabulated elevation in front of the side, degrees.</summary>
    public const double Highest = 150;

    /// <summary>Distance between tabulated elevations, degrees.</summary>
    public const double Spacing = 15;

    private const double Side = -45;
    private const double HighestAtBack = 60;

    /// <summary>Highest tabulated elevation in a plane, degrees.</summary>
    /// <param name="plane">From -90 to 270, degrees.</param>
    public static double HighestElevation(double plane) => plane switch
    {
        < Side => double.Lerp(HighestAtBack, Highest, (plane - Back) / (Side - Back)),
        <= Across => Highest,
        _ => double.Lerp(Highest, HighestAtBack, (plane - Across) / (Back + 360 - Across)),
    };

    /// <inheritdoc/>
    public Placement Place(in JointCoordinates at)
    {
        var limit = Math.Min(elevation.High, HighestElevation(at.ShoulderPlane));
        return new Placement(
            at.ShoulderPlane,
            at.ShoulderElevation,
            new Excess(plane.Coordinate, BehindEdge(at.ShoulderPlane, at.ShoulderElevation)),
            new Excess(elevation.Coordinate, Math.Max(0, at.ShoulderElevation - limit)));
    }

    // Angle between the upper arm and the nearest edge, not the angle between planes: an arm that all but hangs is nearly in each plane.
    private static double BehindEdge(double plane, double elevation)
    {
        if (plane <= Across)
        {
            return 0;
        }

        var (past, before) = (plane - Across, Back + 360 - plane);
        var angle = Degrees.Asin(Degrees.Sin(elevation) * Degrees.Sin(Math.Min(past, before)));
        return past <= before ? angle : -angle;
    }
}
