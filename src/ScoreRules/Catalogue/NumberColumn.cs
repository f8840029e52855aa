namespace ScoreRules.Catalogue;

/// <summary>The numbers of one attribute, a row each; NaN where unknown.</summary>
public sealed class NumberColumn
{
    private readonly double[] values;
    private double[]? compared;

    /// <summary>Takes over an array; numbers that are not finite become unknown.</summary>
    internal NumberColumn(double[] values)
    {
        this.values = values;
        var known = new ulong[RowSet.WordsFor(values.Length)];
        for (var row = 0; row < values.Length; row++)
        {
            if (double.IsFinite(values[row]))
            {
                known[row / 64] |= 1UL << (row % 64);
            }
            else
            {
                values[row] = double.NaN;
            }
        }

        Known = RowSet.FromWords(values.Length, known);
    }

    /// <summary>Number of rows.</summary>
    public int Count => values.Length;

    /// <summary>Rows whose number is known.</summary>
    public RowSet Known { get; }

    /// <summary>The number of a row in the attribute's unit, unrounded; NaN when unknown.</summary>
    public double this[int row] => values[row];

    /// <summary>A column of the given numbers; NaN and infinities are unknown.</summary>
    public static NumberColumn Of(IEnumerable<double> numbers) => new([.. numbers]);

    /// <summary>The numbers as they are compared: rounded to 1e-9, filled up with NaN to whole words of 64 rows.</summary>
    internal ReadOnlySpan<double> Compared => compared ??= Rounded();

    /// <summary>A number as it is compared, so that the last bit of a sum never decides.</summary>
    internal static double AsCompared(double number) => Math.Round(number, 9, MidpointRounding.AwayFromZero);

    private double[] Rounded()
    {
        var rounded = new double[RowSet.WordsFor(values.Length) * 64];
        Array.Fill(rounded, double.NaN, values.Length, rounded.Length - values.Length);
        for (var row = 0; row < values.Length; row++)
        {
            rounded[row] = AsCompared(values[row]);
        }

        return rounded;
    }
}
