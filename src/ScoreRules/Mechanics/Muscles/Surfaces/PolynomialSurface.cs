using ScoreRules.Mechanics.Bodies;

namespace ScoreRules.Mechanics.Muscles.Surfaces;

/// <summary>
/// Length as a polynomial of one or two angles: the sum of c(i,j) x^i y^j with x and y in radians, worked out from the inside (Horner's
/// rule). Coefficients stand in one array, row by row of i, so that nothing is looked up or made while lengths are taken.
/// </summary>
internal sealed class PolynomialSurface : ILengthSurface
{
    private readonly double[] coefficients;
    private readonly int degree;

    /// <summary>Begins a polynomial.</summary>
    /// <param name="terms">Powers of x and y and their coefficient, metres.</param>
    public PolynomialSurface(IReadOnlyCollection<(int I, int J, double C)> terms)
    {
        degree = terms.Max(term => Math.Max(term.I, term.J));
        coefficients = new double[(degree + 1) * (degree + 1)];
        foreach (var (i, j, c) in terms)
        {
            coefficients[(i * (degree + 1)) + j] = c;
        }
    }

    /// <inheritdoc/>
    public double LengthAt(double x, double y)
    {
        var (rx, ry) = (Degrees.ToRadians(x), Degrees.ToRadians(y));
        var sum = 0.0;
        for (var i = degree; i >= 0; i--)
        {
            var row = 0.0;
            for (var at = (i * (degree + 1)) + degree; at >= i * (degree + 1); at--)
            {
                row = (row * ry) + coefficients[at];
            }

            sum = (sum * rx) + row;
        }

        return sum;
    }

    /// <inheritdoc/>
    public Slope SlopeAt(double x, double y)
    {
        var (rx, ry) = (Degrees.ToRadians(x), Degrees.ToRadians(y));
        var (sum, alongX, alongY) = (0.0, 0.0, 0.0);
        for (var i = degree; i >= 0; i--)
        {
            var (row, rowSlope) = (0.0, 0.0);
            for (var at = (i * (degree + 1)) + degree; at >= i * (degree + 1); at--)
            {
                rowSlope = (rowSlope * ry) + row;
                row = (row * ry) + coefficients[at];
            }

            alongX = (alongX * rx) + sum;
            alongY = (alongY * rx) + rowSlope;
            sum = (sum * rx) + row;
        }

        return new Slope(alongX, alongY);
    }
}
