using System.Collections.Immutable;

namespace ScoreRules.Mechanics.Data;

/// <summary>A table of numbers shipped inside the assembly: commas, a header row, no quotes.</summary>
/// <param name="File">Name of the file in this folder, for messages.</param>
/// <param name="Rows">All rows below the header.</param>
internal sealed record EmbeddedTable(string File, ImmutableArray<EmbeddedRow> Rows)
{
    /// <summary>Reads a file of this folder.</summary>
    /// <param name="file">Its name, such as <c>muscles.csv</c>.</param>
    /// <exception cref="InvalidDataException">The file is not there or a row has too many or too few cells: a fault of ours.</exception>
    public static EmbeddedTable Read(string file)
    {
        using var stream = typeof(EmbeddedTable).Assembly.GetManifestResourceStream($"mechanics/{file}")
            ?? throw new InvalidDataException($"{file} is not inside the assembly.");
        using var reader = new StreamReader(stream);
        return Parse(file, reader.ReadToEnd());
    }

    /// <summary>Cuts text into rows.</summary>
    /// <param name="file">What to call the text in messages.</param>
    /// <param name="text">Header and rows.</param>
    /// <exception cref="InvalidDataException">A row has too many or too few cells.</exception>
    public static EmbeddedTable Parse(string file, string text)
    {
        var lines = text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');
        var names = lines[0].Split(',').ToImmutableArray();
        return new EmbeddedTable(file, [.. lines.Skip(1).Select((line, index) => ToRow(file, index + 2, names, line))]);
    }

    private static EmbeddedRow ToRow(string file, int number, ImmutableArray<string> names, string line)
    {
        var row = new EmbeddedRow(file, number, names, [.. line.Split(',')]);
        return row.Cells.Length == names.Length ? row : throw row.Fault($"has {row.Cells.Length} cells instead of {names.Length}");
    }
}
