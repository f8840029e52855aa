using ScoreRules.Statistics.Distributions;

namespace ScoreRules.Statistics.Networks;

/// <summary>The estimate of every difference of a network from all studies at once (Lu and Ades 2004, Statistics in Medicine 23:3105; by least squares as in Ruecker 2012, Research Synthesis Methods 3:312).</summary>
public sealed class NetworkFit
{
    private readonly TreatmentNetwork network;
    private readonly NetworkEquations equations;

    private NetworkFit(TreatmentNetwork network, double tauSquared)
    {
        this.network = network;
        equations = NetworkEquations.Of(network, tauSquared);
        TauSquared = tauSquared;
    }

    /// <summary>The treatments in ordinal order.</summary>
    public IReadOnlyList<string> Treatments => network.Treatments;

    /// <summary>The variance between studies that was used; 0 for the common effect.</summary>
    public double TauSquared { get; }

    /// <summary>Weighted sum of squares of the residuals; of the common effect, Cochran's Q of the network.</summary>
    public double Q => equations.Q;

    /// <summary>Degrees of freedom of <see cref="Q"/>.</summary>
    public int Degrees => network.Degrees;

    /// <summary>Share, 0 to 1, of the variation that is not chance: max(0, (Q - df) / Q); for the common effect (Higgins and Thompson 2002, Statistics in Medicine 21:1539).</summary>
    public double ISquared => Q > Degrees ? (Q - Degrees) / Q : 0;

    /// <summary>Fits with one effect for each comparison in all studies.</summary>
    public static NetworkFit Common(TreatmentNetwork network) => new(network, 0);

    /// <summary>Fits with effects that differ between studies.</summary>
    /// <param name="network">The studies.</param>
    /// <param name="tauSquared">The variance between studies, 0 or more.</param>
    /// <exception cref="StatisticsInputException">A variance below 0.</exception>
    public static NetworkFit Random(TreatmentNetwork network, double tauSquared) => new(network, Require.NotNegative(tauSquared, "The variance between studies"));

    /// <summary>Outcome of the first less that of the second: a cell of the league table.</summary>
    /// <exception cref="StatisticsInputException">A treatment that is not in the network.</exception>
    public double Difference(string first, string second) => Effect(network.Place(first)) - Effect(network.Place(second));

    /// <summary>Standard error of <see cref="Difference"/>; 0 for a treatment with itself.</summary>
    /// <exception cref="StatisticsInputException">A treatment that is not in the network.</exception>
    public double StandardError(string first, string second)
    {
        var (i, j) = (network.Place(first), network.Place(second));
        return i == j ? 0 : Math.Sqrt(Covariance(i, i) + Covariance(j, j) - (2 * Covariance(i, j)));
    }

    /// <summary>Interval of <see cref="Difference"/> by the normal distribution.</summary>
    /// <exception cref="StatisticsInputException">A treatment that is not in the network, or a level out of its range.</exception>
    public Interval ConfidenceInterval(string first, string second, double level) =>
        Interval.Around(Difference(first, second), NormalDistribution.HalfWidth(level) * StandardError(first, second));

    /// <summary>P-score: the mean probability of being better than another treatment, 0 to 1 (Ruecker and Schwarzer 2015, BMC Medical Research Methodology 15:58).</summary>
    /// <param name="treatment">Of which treatment.</param>
    /// <param name="higherIsBetter">Whether a high outcome is a good one.</param>
    /// <exception cref="StatisticsInputException">A treatment that is not in the network.</exception>
    public double PScore(string treatment, bool higherIsBetter) => Treatments.Where(other => other != treatment)
        .Average(other => NormalDistribution.Below((higherIsBetter ? 1 : -1) * Difference(treatment, other) / StandardError(treatment, other)));

    private double Effect(int place) => place == 0 ? 0 : equations.Effects[place - 1];

    private double Covariance(int first, int second) => first == 0 || second == 0 ? 0 : equations.Covariance[first - 1, second - 1];
}
