namespace ScoreRules.Catalogue;

/// <summary>The numbers of one attribute, a row each; NaN where unknown.</summary>
public sealed class NumberColumn
{
    private readonly double[] numbers;
    private double[]? compared;

    /// <summary>Takes over an array made by <see cref="Blank"/>; numbers that are not finite become unknown.</summary>
    internal NumberColumn(int count, double[] numbers)
    {
        Count = count;
        this.numbers = numbers;
        var known = new ulong[RowSet.WordsFor(count)];
        for (var row = 0; row < count; row++)
        {
            if (double.IsFinite(numbers[row]))
            {
                known[row / 64] |= 1UL << (row % 64);
            }
            else
            {
                numbers[row] = double.NaN;
            }
        }

        Known = RowSet.FromWords(count, known).Recognised();
    }

    /// <summary>Number of rows.</summary>
    public int Count { get; }

    /// <summary>Rows whose number is known.</summary>
    public RowSet Known { get; }

    /// <summary>The number of a row in the attribute's unit, unrounded; NaN when unknown.</summary>
    public double this[int row] => numbers.AsSpan(0, Count)[row];

    /// <summary>A column of the given numbers; NaN and infinities are unknown.</summary>
    public static NumberColumn Of(IReadOnlyCollection<double> numbers)
    {
        var column = Blank(numbers.Count);
        var row = 0;
        foreach (var number in numbers)
        {
            column[row++] = number;
        }

        return new NumberColumn(numbers.Count, column);
    }

    /// <summary>The numbers of all rows, for loops that must be fast; NaN where unknown.</summary>
    internal ReadOnlySpan<double> Numbers => numbers.AsSpan(0, Count);

    /// <summary>The numbers as they are compared: rounded to 1e-9, filled up with NaN to whole words of 64 rows.</summary>
    internal ReadOnlySpan<double> Compared => compared ??= Rounded();

    /// <summary>An array of unknown numbers, long enough for whole words of 64 rows.</summary>
    internal static double[] Blank(int count)
    {
        var blank = new double[RowSet.WordsFor(count) * 64];
        Array.Fill(blank, double.NaN);
        return blank;
    }

    /// <summary>A number as it is compared, so that the last bit of a sum never decides.</summary>
    internal static double AsCompared(double number) => Math.Round(number, 9, MidpointRounding.AwayFromZero);

    // Ratings are whole numbers: rounding changes nothing, and one array serves for both.
    private double[] Rounded() =>
        Array.Exists(numbers, number => !double.IsNaN(number) && AsCompared(number) != number)
            ? Array.ConvertAll(numbers, AsCompared)
            : numbers;
}
