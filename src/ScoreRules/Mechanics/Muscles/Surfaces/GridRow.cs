namespace ScoreRules.Mechanics.Muscles.Surfaces;

/// <summary>Lengths along the first angle at one second angle.</summary>
/// <param name="Y">The second angle, degrees.</param>
/// <param name="Xs">First angles, rising, degrees.</param>
/// <param name="Lengths">Length at each, metres.</param>
internal sealed record GridRow(double Y, double[] Xs, double[] Lengths)
{
    /// <summary>Smallest first angle, degrees.</summary>
    public double Low => Xs[0];

    /// <summary>Largest first angle, degrees.</summary>
    public double High => Xs[^1];

    /// <summary>Length at a first angle, straight between neighbours, metres; the end value beyond the ends.</summary>
    /// <param name="x">First angle, degrees.</param>
    public double LengthAt(double x)
    {
        var at = 1;
        while (at < Xs.Length - 1 && Xs[at] < x)
        {
            at++;
        }

        var share = Math.Clamp((x - Xs[at - 1]) / (Xs[at] - Xs[at - 1]), 0, 1);
        return double.Lerp(Lengths[at - 1], Lengths[at], share);
    }
}
