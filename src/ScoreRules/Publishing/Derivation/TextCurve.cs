using System.Collections.Immutable;

namespace ScoreRules.Publishing.Derivation;

/// <summary>A curve in block characters for terminals: eight heights a row, readable without colour.</summary>
internal static class TextCurve
{
    private const string Blocks = " ▁▂▃▄▅▆▇█";

    /// <summary>Columns of a curve; with its gutter it stays under 78.</summary>
    public const int Columns = 60;

    /// <summary>The rows of a curve, the highest first.</summary>
    /// <param name="values">Parts of the height, 0 to 1; taken as 0 below and 1 above.</param>
    /// <param name="rows">How many rows high.</param>
    public static ImmutableArray<string> Rows(IReadOnlyList<double> values, int rows) =>
        [.. Enumerable.Range(0, rows).Reverse().Select(row => string.Concat(Enumerable.Range(0, Columns).Select(column => Block(At(values, column), row, rows))))];

    /// <summary>A line that marks the third at one end: "‹ long third ›" over its columns.</summary>
    /// <param name="isAtStart">Which end.</param>
    /// <param name="words">What stands in it.</param>
    public static string Third(bool isAtStart, string words)
    {
        const int Third = Columns / 3;
        var inside = $" {words} ";
        var left = (Third - 2 - inside.Length) / 2;
        var mark = $"├{new string('─', left)}{inside}{new string('─', Third - 2 - inside.Length - left)}┤";
        return isAtStart ? mark : new string(' ', Columns - Third) + mark;
    }

    private static double At(IReadOnlyList<double> values, int column) =>
        values[(int)Math.Round((double)column / (Columns - 1) * (values.Count - 1), MidpointRounding.AwayFromZero)];

    private static char Block(double value, int row, int rows)
    {
        var eighths = (int)Math.Round(Math.Clamp(value, 0, 1) * rows * 8, MidpointRounding.AwayFromZero) - (8 * row);
        return Blocks[Math.Clamp(eighths, 0, 8)];
    }
}
