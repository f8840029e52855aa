using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Muscles.Surfaces;

/// <summary>
/// Length from a table, straight between neighbours (bilinear). Each row is one second angle and may lack some of the first angles: the
/// line then runs to the next one it has. The slope is a central difference over one spacing of the rows, which keeps it free of steps.
/// </summary>
/// <param name="rows">Rows by rising second angle, evenly spaced; each with at least two points.</param>
internal sealed class GridSurface(GridRow[] rows) : ILengthSurface
{
    private readonly double spacing = rows[1].Y - rows[0].Y;

    /// <inheritdoc/>
    public double LengthAt(double x, double y)
    {
        var place = Math.Clamp((y - rows[0].Y) / spacing, 0, rows.Length - 1);
        var below = Math.Min((int)place, rows.Length - 2);
        return double.Lerp(rows[below].LengthAt(x), rows[below + 1].LengthAt(x), place - below);
    }

    /// <inheritdoc/>
    public Slope SlopeAt(double x, double y) => new(
        Difference(Math.Max(x - (spacing / 2), rows[0].Low), Math.Min(x + (spacing / 2), rows[0].High), at => LengthAt(at, y)),
        Difference(Math.Max(y - (spacing / 2), rows[0].Y), Math.Min(y + (spacing / 2), rows[^1].Y), at => LengthAt(x, at)));

    private static double Difference(double from, double to, Func<double, double> length) =>
        (length(to) - length(from)) / Degrees.ToRadians(to - from);
}
