namespace ScoreRules.Statistics.Solving;

/// <summary>
/// The Cholesky factor of a symmetric matrix that gains and loses rows, as active constraints do. Own code: the library's factors a whole
/// matrix anew at each change, and sums in parallel.
/// </summary>
internal sealed class GrowingFactor
{
    private readonly List<double[]> rows = [];

    public int Count => rows.Count;

    /// <summary>The same factor, to be changed by itself; rows are shared, as they never change.</summary>
    public GrowingFactor Copy()
    {
        var copy = new GrowingFactor();
        copy.rows.AddRange(rows);
        return copy;
    }

    /// <summary>Solves L y = right for the first entries of right, up to <see cref="Count"/>.</summary>
    public double[] Forward(ReadOnlySpan<double> right)
    {
        var solved = new double[rows.Count];
        for (var i = 0; i < solved.Length; i++)
        {
            solved[i] = (right[i] - InnerProduct.Of(rows[i].AsSpan(0, i), solved.AsSpan(0, i))) / rows[i][i];
        }

        return solved;
    }

    /// <summary>Solves L' x = right in place.</summary>
    public void Backward(double[] right)
    {
        for (var i = right.Length - 1; i >= 0; i--)
        {
            right[i] /= rows[i][i];
            InnerProduct.AddScaled(right.AsSpan(0, i), rows[i].AsSpan(0, i), -right[i]);
        }
    }

    /// <summary>Solves for the whole matrix.</summary>
    public double[] Solve(ReadOnlySpan<double> right)
    {
        var solved = Forward(right);
        Backward(solved);
        return solved;
    }

    /// <summary>Adds a row, given its solved part below the diagonal and what is left on the diagonal, above 0.</summary>
    public void Append(double[] forward, double pivot) => rows.Add([.. forward, Math.Sqrt(pivot)]);

    /// <summary>Takes a row out; the rows behind it are factored anew from the products that they stand for.</summary>
    public void RemoveAt(int index)
    {
        var behind = rows.GetRange(index, rows.Count - index);
        rows.RemoveRange(index, rows.Count - index);
        for (var k = 1; k < behind.Count; k++)
        {
            var right = new double[rows.Count];
            for (var j = 0; j < right.Length; j++)
            {
                var other = j < index ? rows[j] : behind[j - index + 1];
                right[j] = InnerProduct.Of(behind[k].AsSpan(0, other.Length), other);
            }

            var diagonal = InnerProduct.Of(behind[k], behind[k]);
            var forward = Forward(right);
            Append(forward, Math.Max(diagonal - InnerProduct.Of(forward, forward), diagonal * 1e-15));
        }
    }
}
