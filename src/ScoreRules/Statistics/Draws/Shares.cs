namespace ScoreRules.Statistics.Draws;

/// <summary>Numbers as shares of their sum.</summary>
internal static class Shares
{
    public static void Normalise(Span<double> numbers)
    {
        var sum = 0.0;
        foreach (var number in numbers)
        {
            sum += number;
        }

        for (var i = 0; i < numbers.Length; i++)
        {
            numbers[i] /= sum;
        }
    }
}
