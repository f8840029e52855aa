using MathNet.Numerics.LinearAlgebra;

namespace ScoreRules.Statistics.Networks;

/// <summary>
/// Generalised least squares over a network for one tau squared. The covariance of a study is V + tau^2 S, where S has 1 on its diagonal
/// and 1/2 elsewhere (Higgins and Whitehead 1996, Statistics in Medicine 15:2733). The basic parameters are the differences of all later
/// treatments from the first; sums run study by study, so that nothing as large as all studies together is inverted.
/// </summary>
internal sealed class NetworkEquations
{
    private NetworkEquations(Vector<double> effects, Matrix<double> covariance)
    {
        Effects = effects;
        Covariance = covariance;
    }

    /// <summary>Differences from the first treatment.</summary>
    public Vector<double> Effects { get; }

    /// <summary>Covariance of the effects.</summary>
    public Matrix<double> Covariance { get; }

    /// <summary>Weighted sum of squares of the residuals.</summary>
    public double Q { get; private set; }

    /// <summary>Q with the weights once more: r' W S W r.</summary>
    public double SpreadQ { get; private set; }

    /// <summary>Trace of P S, P the residual projection.</summary>
    public double SpreadTrace { get; private set; }

    /// <summary>Restricted log likelihood without its constant (Harville 1977, Journal of the American Statistical Association 72:320).</summary>
    public double RestrictedLogLikelihood { get; private set; }

    public static NetworkEquations Of(TreatmentNetwork network, double tauSquared)
    {
        var blocks = network.Studies.Select(study => StudyBlock.Of(network, study, tauSquared)).ToList();
        var size = network.Treatments.Count - 1;
        var information = Matrix<double>.Build.Dense(size, size);
        var right = Vector<double>.Build.Dense(size);
        foreach (var block in blocks)
        {
            information += block.Design.TransposeThisAndMultiply(block.Weight) * block.Design;
            right += block.Design.TransposeThisAndMultiply(block.Weight * block.Study.Differences);
        }

        var factor = information.Cholesky();
        var equations = new NetworkEquations(factor.Solve(right), factor.Solve(Matrix<double>.Build.DenseIdentity(size)));
        equations.Sum(blocks, factor.DeterminantLn);
        return equations;
    }

    private void Sum(List<StudyBlock> blocks, double logInformation)
    {
        var logVariance = 0.0;
        foreach (var block in blocks)
        {
            var residual = block.Weight * (block.Study.Differences - (block.Design * Effects));
            Q += residual * (block.Study.Differences - (block.Design * Effects));
            SpreadQ += residual * block.Spread * residual;
            var spread = block.Weight * block.Spread;
            SpreadTrace += spread.Trace() - (Covariance * block.Design.TransposeThisAndMultiply(spread * block.Weight) * block.Design).Trace();
            logVariance += block.LogVariance;
        }

        RestrictedLogLikelihood = -(logVariance + logInformation + Q) / 2;
    }
}
