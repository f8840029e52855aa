namespace ScoreRules.Statistics.Networks;

/// <summary>The pairs that one study reports, complete and without contradiction.</summary>
internal sealed class PairTable
{
    private readonly double[,] differences;
    private readonly double[,] variances;

    public PairTable(string name, IReadOnlyList<string> treatments, IReadOnlyList<ReportedDifference> pairs, double tolerance)
    {
        var count = treatments.Count;
        (differences, variances) = (new double[count, count], new double[count, count]);
        foreach (var pair in pairs)
        {
            Add(name, treatments, pair);
        }

        for (var i = 0; i < count; i++)
        {
            for (var j = i + 1; j < count; j++)
            {
                Check(name, treatments, i, j, tolerance);
            }
        }
    }

    public double Difference(int first, int second) => differences[first, second];

    public double Variance(int first, int second) => variances[first, second];

    private void Add(string name, IReadOnlyList<string> treatments, ReportedDifference pair)
    {
        var (i, j) = (Place(pair.First), Place(pair.Second));
        if (variances[i, j] > 0)
        {
            throw new StatisticsInputException($"The study \"{name}\" reports {pair.First} and {pair.Second} twice; give each pair once.");
        }

        (differences[i, j], differences[j, i]) = (pair.Difference, -pair.Difference);
        variances[i, j] = variances[j, i] = pair.StandardError * pair.StandardError;

        int Place(string treatment) => Enumerable.Range(0, treatments.Count).First(at => treatments[at] == treatment);
    }

    private void Check(string name, IReadOnlyList<string> treatments, int i, int j, double tolerance)
    {
        if (variances[i, j] == 0)
        {
            throw new StatisticsInputException($"The study \"{name}\" does not report {treatments[i]} and {treatments[j]}; give every pair of its treatments.");
        }

        if (Math.Abs(differences[i, j] - (differences[i, 0] - differences[j, 0])) > tolerance)
        {
            throw new StatisticsInputException($"The differences of \"{name}\" do not add up between {treatments[0]}, {treatments[i]} and {treatments[j]}.");
        }
    }
}
