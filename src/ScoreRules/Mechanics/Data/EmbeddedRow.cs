using System.Collections.Immutable;
using System.Globalization;

namespace ScoreRules.Mechanics.Data;

/// <summary>One row of a shipped table.</summary>
/// <param name="File">Name of its file.</param>
/// <param name="Line">Its line in the file, the header is 1.</param>
/// <param name="Names">Names of the columns.</param>
/// <param name="Cells">The cells, as they stand.</param>
internal sealed record EmbeddedRow(string File, int Line, ImmutableArray<string> Names, ImmutableArray<string> Cells)
{
    /// <summary>A cell as it stands.</summary>
    /// <param name="name">Name of its column.</param>
    /// <exception cref="InvalidDataException">There is no such column.</exception>
    public string this[string name] => Names.IndexOf(name) is var at and >= 0 ? Cells[at] : throw Fault($"has no column \"{name}\"");

    /// <summary>A cell as a number.</summary>
    /// <param name="name">Name of its column.</param>
    /// <exception cref="InvalidDataException">The cell is not a finite number.</exception>
    public double Number(string name) => ToNumber(name, this[name]);

    /// <summary>Text as a number.</summary>
    /// <param name="name">What the text stands for, for the message.</param>
    /// <param name="text">Digits with a decimal point.</param>
    /// <exception cref="InvalidDataException">The text is not a finite number.</exception>
    public double ToNumber(string name, string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number)
            ? number
            : throw Fault($"has \"{text}\" for {name}, which is not a number");

    /// <summary>The exception for a fault in this row.</summary>
    /// <param name="what">What is wrong, following "muscles.csv, line 3".</param>
    public InvalidDataException Fault(string what) => new($"{File}, line {Line} {what}.");
}
