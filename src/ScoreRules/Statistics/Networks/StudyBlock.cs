using MathNet.Numerics.LinearAlgebra;

namespace ScoreRules.Statistics.Networks;

/// <summary>What one study adds to the equations of a network.</summary>
/// <param name="Study">The study.</param>
/// <param name="Design">Which basic parameters each difference is made of.</param>
/// <param name="Spread">S: 1 on the diagonal, 1/2 elsewhere.</param>
/// <param name="Weight">The inverse of V + tau^2 S.</param>
/// <param name="LogVariance">The logarithm of the determinant of V + tau^2 S.</param>
internal sealed record StudyBlock(NetworkStudy Study, Matrix<double> Design, Matrix<double> Spread, Matrix<double> Weight, double LogVariance)
{
    public static StudyBlock Of(TreatmentNetwork network, NetworkStudy study, double tauSquared)
    {
        var rows = study.Treatments.Count - 1;
        var design = Matrix<double>.Build.Dense(rows, network.Treatments.Count - 1);
        for (var row = 0; row < rows; row++)
        {
            Add(design, row, network.Place(study.Treatments[row + 1]), 1);
            Add(design, row, network.Place(study.Treatments[0]), -1);
        }

        var spread = Matrix<double>.Build.Dense(rows, rows, (i, j) => i == j ? 1 : 0.5);
        var factor = (study.Covariance + (tauSquared * spread)).Cholesky();
        return new StudyBlock(study, design, spread, factor.Solve(Matrix<double>.Build.DenseIdentity(rows)), factor.DeterminantLn);
    }

    // The first treatment of the network is where all others are measured from.
    private static void Add(Matrix<double> design, int row, int place, double sign)
    {
        if (place > 0)
        {
            design[row, place - 1] += sign;
        }
    }
}
