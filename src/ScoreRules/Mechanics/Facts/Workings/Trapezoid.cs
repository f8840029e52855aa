namespace ScoreRules.Mechanics.Facts.Workings;

/// <summary>Means over evenly spaced steps joined by straight lines.</summary>
internal static class Trapezoid
{
    /// <summary>Mean over all steps.</summary>
    public static double Mean(ReadOnlySpan<double> values)
    {
        var sum = (values[0] + values[^1]) / 2;
        foreach (var value in values[1..^1])
        {
            sum += value;
        }

        return sum / (values.Length - 1);
    }

    /// <summary>Mean of the product of two numbers a step.</summary>
    public static double MeanOfProduct(ReadOnlySpan<double> left, ReadOnlySpan<double> right)
    {
        var sum = ((left[0] * right[0]) + (left[^1] * right[^1])) / 2;
        for (var i = 1; i < left.Length - 1; i++)
        {
            sum += left[i] * right[i];
        }

        return sum / (left.Length - 1);
    }

    /// <summary>The steps of the first or of the last third; the number of intervals is a multiple of three.</summary>
    public static ReadOnlySpan<double> Third(ReadOnlySpan<double> values, bool isFirst)
    {
        var third = (values.Length - 1) / 3;
        return isFirst ? values[..(third + 1)] : values[^(third + 1)..];
    }
}
