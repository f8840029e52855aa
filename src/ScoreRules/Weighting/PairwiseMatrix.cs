using MathNet.Numerics.LinearAlgebra;

namespace ScoreRules.Weighting;

/// <summary>A table of comparisons of every pair: the entry in row i and column j says how many times as important i is as j.</summary>
public sealed class PairwiseMatrix
{
    private readonly Matrix<double> entries;

    private PairwiseMatrix(Matrix<double> entries) => this.entries = entries;

    /// <summary>How many things are compared.</summary>
    public int Size => entries.RowCount;

    /// <summary>The largest eigenvalue; equal to <see cref="Size"/> when all comparisons agree, else above it.</summary>
    public double LargestEigenvalue => entries.Evd().EigenValues.Max(value => value.Real);

    /// <summary>Consistency index (Saaty 1980, The Analytic Hierarchy Process): (largest eigenvalue - n) / (n - 1); 0 for fewer than three things.</summary>
    public double ConsistencyIndex => Size < 3 ? 0 : Math.Max(0, (LargestEigenvalue - Size) / (Size - 1));

    /// <summary>Makes a table from entries above 0; what stands below the diagonal is taken as given.</summary>
    public static PairwiseMatrix Of(double[,] entries) => new(Matrix<double>.Build.DenseOfArray(entries));

    /// <summary>Makes a table from comparisons; a pair that nobody compared gets the ratio of the weights fitted to the others.</summary>
    /// <param name="fitted">A weight above 0 for each thing.</param>
    /// <param name="comparisons">The comparisons; of several for one pair the last counts.</param>
    public static PairwiseMatrix Completed(IReadOnlyList<double> fitted, IEnumerable<PairwiseComparison> comparisons)
    {
        var table = Matrix<double>.Build.Dense(fitted.Count, fitted.Count, (row, column) => row == column ? 1 : fitted[row] / fitted[column]);
        foreach (var (first, second, ratio) in comparisons)
        {
            table[first, second] = ratio;
            table[second, first] = 1 / ratio;
        }

        return new PairwiseMatrix(table);
    }

    /// <summary>Weights as the geometric mean of each row, in shares of 1 (Crawford and Williams 1985).</summary>
    public double[] GeometricMeans() => WeightVector.Normalised([.. entries.EnumerateRows().Select(row => Math.Exp(row.Sum(Math.Log) / Size))]);

    /// <summary>Weights as the eigenvector of the largest eigenvalue, in shares of 1 (Saaty 1980).</summary>
    public double[] Eigenvector()
    {
        var evd = entries.Evd();
        var largest = Enumerable.Range(0, Size).MaxBy(i => evd.EigenValues[i].Real);
        return WeightVector.Normalised([.. evd.EigenVectors.Column(largest).Select(Math.Abs)]);
    }

    /// <summary>Geometric consistency index (Aguaron and Moreno-Jimenez 2003, European Journal of Operational Research 147:137): 2 / ((n-1)(n-2)) times the sum over pairs of (ln a_ij - ln w_i + ln w_j)^2, w by geometric means; 0 for fewer than three things.</summary>
    public double GeometricConsistencyIndex()
    {
        var weights = GeometricMeans();
        var squares = 0.0;
        for (var row = 0; row < Size; row++)
        {
            for (var column = row + 1; column < Size; column++)
            {
                var error = Math.Log(entries[row, column] * weights[column] / weights[row]);
                squares += error * error;
            }
        }

        return Size < 3 ? 0 : 2 * squares / ((Size - 1) * (Size - 2));
    }
}
