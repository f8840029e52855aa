namespace ScoreRules.Mechanics.Muscles.Surfaces;

/// <summary>Length of a muscle part over one or two angles. Knows no limits: angles outside of the data are the caller's business.</summary>
internal interface ILengthSurface
{
    /// <summary>Length, metres.</summary>
    /// <param name="x">First angle, degrees.</param>
    /// <param name="y">Second angle, degrees; of no effect where there is only one.</param>
    double LengthAt(double x, double y);

    /// <summary>Change of length with each angle, metres a radian.</summary>
    /// <param name="x">First angle, degrees.</param>
    /// <param name="y">Second angle, degrees.</param>
    Slope SlopeAt(double x, double y);
}
