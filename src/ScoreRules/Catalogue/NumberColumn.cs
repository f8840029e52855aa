namespace ScoreRules.Catalogue;

/// <summary>A number for every row; NaN where unknown.</summary>
/// <param name="values">The numbers, by row; not changed afterwards.</param>
internal sealed class NumberColumn(double[] values)
{
    private double[]? compared;
    private RowSet? known;
    private bool? isComplete;

    /// <summary>The numbers as recorded.</summary>
    public double[] Values { get; } = values;

    /// <summary>The numbers as they are compared: rounded to 1e-9. Mostly the very same array.</summary>
    public double[] Compared => compared ??= Rounded();

    /// <summary>Rows whose number is known.</summary>
    public RowSet Known => known ??= ReadKnown();

    /// <summary>Whether the number is known in every row.</summary>
    public bool IsComplete => isComplete ??= Known.Count == Values.Length;

    /// <summary>A number as it is compared: rounded to 1e-9, so that the last bit of a sum never decides.</summary>
    public static double AsCompared(double value) => Math.Round(value, 9, MidpointRounding.AwayFromZero);

    /// <summary>A column that knows nothing.</summary>
    public static NumberColumn Unknown(int rowCount)
    {
        var values = new double[rowCount];
        Array.Fill(values, double.NaN);
        return new NumberColumn(values);
    }

    private double[] Rounded()
    {
        double[]? rounded = null;
        for (var row = 0; row < Values.Length; row++)
        {
            var value = AsCompared(Values[row]);
            if (rounded is null && !value.Equals(Values[row]))
            {
                rounded = [.. Values];
            }

            if (rounded is not null)
            {
                rounded[row] = value;
            }
        }

        return rounded ?? Values;
    }

    private RowSet ReadKnown()
    {
        var words = RowSet.WordsFor(Values.Length);
        for (var row = 0; row < Values.Length; row++)
        {
            words[row >> 6] |= (double.IsNaN(Values[row]) ? 0UL : 1UL) << row;
        }

        return RowSet.FromWords(words, Values.Length);
    }
}
