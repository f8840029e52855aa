using MathNet.Numerics.LinearAlgebra;

namespace ScoreRules.Statistics.Networks;

/// <summary>
/// A study of two or more treatments, as differences of each later treatment from the first one, with their covariance. Differences
/// within one study share the first arm and are correlated for that reason.
/// </summary>
public sealed class NetworkStudy
{
    private NetworkStudy(string name, IReadOnlyList<string> treatments, Vector<double> differences, Matrix<double> covariance)
    {
        Name = name;
        Treatments = treatments;
        Differences = differences;
        Covariance = covariance;
    }

    /// <summary>What the study is called.</summary>
    public string Name { get; }

    /// <summary>Its treatments, two or more, in the order given.</summary>
    public IReadOnlyList<string> Treatments { get; }

    /// <summary>Each later treatment less the first.</summary>
    internal Vector<double> Differences { get; }

    /// <summary>Covariance of the differences.</summary>
    internal Matrix<double> Covariance { get; }

    /// <summary>The set of treatments, as a name: in ordinal order with colons between.</summary>
    internal string Design => string.Join(':', Treatments.Order(StringComparer.Ordinal));

    /// <summary>Makes a study from its arms, which are independent of one another: covariance v1 between differences, v1 + vi on the diagonal.</summary>
    /// <exception cref="StatisticsInputException">Fewer than two arms, or a treatment twice.</exception>
    public static NetworkStudy FromArms(string name, IReadOnlyList<Arm> arms)
    {
        var treatments = Checked(name, [.. arms.Select(arm => arm.Treatment)]);
        var differences = Vector<double>.Build.Dense(arms.Count - 1, i => arms[i + 1].Mean - arms[0].Mean);
        var covariance = Matrix<double>.Build.Dense(arms.Count - 1, arms.Count - 1, (i, j) => arms[0].Variance + (i == j ? arms[i + 1].Variance : 0));
        return new NetworkStudy(name, treatments, differences, covariance);
    }

    /// <summary>
    /// Makes a study from all its pairs: the covariance of two differences from the first treatment is (v1i + v1j - vij) / 2. The pairs of
    /// three treatments or more must agree with one another.
    /// </summary>
    /// <param name="name">What the study is called.</param>
    /// <param name="pairs">One difference for every pair of its treatments, in any order and direction.</param>
    /// <param name="tolerance">How far the differences of a study may be off from adding up, in the unit of the outcome; for rounding.</param>
    /// <exception cref="StatisticsInputException">A pair is missing or twice, differences do not add up, or their errors cannot be those of three groups.</exception>
    public static NetworkStudy FromDifferences(string name, IReadOnlyList<ReportedDifference> pairs, double tolerance = 0.001)
    {
        var treatments = Checked(name, [.. pairs.SelectMany(pair => new[] { pair.First, pair.Second }).Distinct(StringComparer.Ordinal)]);
        var table = new PairTable(name, treatments, pairs, Require.NotNegative(tolerance, "The tolerance for rounding"));
        var differences = Vector<double>.Build.Dense(treatments.Count - 1, i => table.Difference(i + 1, 0));
        var covariance = Matrix<double>.Build.Dense(treatments.Count - 1, treatments.Count - 1, (i, j) => (table.Variance(0, i + 1) + table.Variance(0, j + 1) - table.Variance(i + 1, j + 1)) / 2);
        return Covariances.IsPositiveDefinite(covariance)
            ? new NetworkStudy(name, treatments, differences, covariance)
            : throw new StatisticsInputException($"The standard errors of \"{name}\" cannot belong to one study: one is larger than the others allow.");
    }

    /// <summary>The difference between two of its treatments and the variance of it.</summary>
    internal (double Difference, double Variance) Between(string first, string second)
    {
        var contrast = Vector<double>.Build.Dense(Treatments.Count - 1);
        for (var i = 1; i < Treatments.Count; i++)
        {
            contrast[i - 1] = Treatments[i] == first ? 1 : Treatments[i] == second ? -1 : 0;
        }

        return (contrast * Differences, contrast * Covariance * contrast);
    }

    private static IReadOnlyList<string> Checked(string name, IReadOnlyList<string> treatments)
    {
        if (treatments.Count < 2)
        {
            throw new StatisticsInputException($"The study \"{name}\" has {treatments.Count switch { 0 => "no arm", _ => "one arm" }}; a comparison takes two.");
        }

        var twice = treatments.GroupBy(treatment => treatment, StringComparer.Ordinal).FirstOrDefault(group => group.Count() > 1);
        return twice is null ? treatments : throw new StatisticsInputException($"The study \"{name}\" has \"{twice.Key}\" twice; give one arm to each treatment.");
    }
}
