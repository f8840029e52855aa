namespace ScoreRules.Mechanics.Statics.Loads;

/// <summary>How hard an elastic band pulls at a length. A band only pulls: slack means zero.</summary>
public abstract record BandLaw
{
    private BandLaw()
    {
    }

    /// <summary>Tension at a length, N.</summary>
    /// <param name="metres">Distance of the ends, m.</param>
    public abstract double Tension(double metres);

    /// <summary>Two numbers: T = k x (L - L0), zero while L is under L0.</summary>
    /// <param name="NewtonsPerMetre">Stiffness k, N/m.</param>
    /// <param name="SlackMetres">Length L0 at which it begins to pull, m.</param>
    public sealed record Linear(double NewtonsPerMetre, double SlackMetres) : BandLaw
    {
        /// <inheritdoc/>
        public override double Tension(double metres) => NewtonsPerMetre * Math.Max(0, metres - SlackMetres);
    }

    /// <summary>A measured table of length (m) and tension (N), joined by straight lines; zero below its first length.</summary>
    /// <param name="Measured">Length and tension.</param>
    public sealed record Table(PiecewiseLinear Measured) : BandLaw
    {
        /// <inheritdoc/>
        public override double Tension(double metres) => metres < Measured.Points[0].At ? 0 : Math.Max(0, Measured.Of(metres));
    }
}
