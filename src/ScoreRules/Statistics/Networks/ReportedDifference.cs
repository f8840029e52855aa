namespace ScoreRules.Statistics.Networks;

/// <summary>A difference as a study reports it: the first less the second. Checked when it is made.</summary>
public sealed record ReportedDifference
{
    /// <summary>Takes a difference and its standard error.</summary>
    /// <param name="first">The treatment whose outcome comes first.</param>
    /// <param name="second">The treatment that is taken off it.</param>
    /// <param name="difference">Outcome of the first less that of the second.</param>
    /// <param name="standardError">Its standard error, above 0.</param>
    /// <exception cref="StatisticsInputException">A figure out of its range, or one treatment against itself.</exception>
    public ReportedDifference(string first, string second, double difference, double standardError)
    {
        (First, Second) = first == second ? throw new StatisticsInputException($"A difference needs two treatments, but \"{first}\" is compared with itself.") : (first, second);
        Difference = Require.Finite(difference, $"The difference between {first} and {second}");
        StandardError = Require.Positive(standardError, $"The standard error of the difference between {first} and {second}");
    }

    /// <summary>The treatment whose outcome comes first.</summary>
    public string First { get; }

    /// <summary>The treatment that is taken off it.</summary>
    public string Second { get; }

    /// <summary>Outcome of the first less that of the second.</summary>
    public double Difference { get; }

    /// <summary>Its standard error.</summary>
    public double StandardError { get; }
}
