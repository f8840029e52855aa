using System.Collections.Immutable;
using System.Globalization;
using ScoreRules.Mechanics.Data;
using ScoreRules.Mechanics.Muscles.Surfaces;

namespace ScoreRules.Mechanics.Muscles;

/// <summary>Reads the shipped tables of muscles. A fault in them is a fault of ours and throws, with file and line.</summary>
internal static class MuscleReader
{
    private const string Grid = "grid";

    /// <summary>All parts, in the order of the file.</summary>
    public static ImmutableArray<MusclePart> Parts() => Parts(EmbeddedTable.Read("muscle-parts.csv"), EmbeddedTable.Read("muscle-grids.csv"));

    /// <summary>All parts of a table.</summary>
    /// <param name="parts">Names, angles, ranges, grades and coefficients.</param>
    /// <param name="grids">Lengths of the parts that say "grid" instead of coefficients.</param>
    /// <exception cref="InvalidDataException">A row is not as it should be.</exception>
    public static ImmutableArray<MusclePart> Parts(EmbeddedTable parts, EmbeddedTable grids)
    {
        var lengths = grids.Rows.ToLookup(row => row["part"], StringComparer.Ordinal);
        return [.. parts.Rows.Select(row => ToPart(row, lengths[row["part"]]))];
    }

    /// <summary>All muscles, in the order of the file.</summary>
    public static ImmutableArray<Muscle> Muscles(IReadOnlyDictionary<string, MusclePart> parts) => Muscles(EmbeddedTable.Read("muscles.csv"), parts);

    /// <summary>All muscles of a table.</summary>
    /// <exception cref="InvalidDataException">A row is not as it should be, or names a part that is not there.</exception>
    public static ImmutableArray<Muscle> Muscles(EmbeddedTable muscles, IReadOnlyDictionary<string, MusclePart> parts) =>
        [.. muscles.Rows.Select(row => new Muscle(
            row["muscle"],
            [.. row["parts"].Split(';').Select(name => parts.GetValueOrDefault(name) ?? throw row.Fault($"names the part \"{name}\", which is not there"))],
            row.Number("practicalShortest"),
            row.Number("practicalLongest")))];

    private static MusclePart ToPart(EmbeddedRow row, IEnumerable<EmbeddedRow> grid) => new(
        row["part"],
        ToRange(row, "first"),
        row["second"].Length > 0 ? ToRange(row, "second") : null,
        row.Number("shortest"),
        row.Number("longest"),
        ToReliability(row),
        row["coefficients"] == Grid ? ToGrid(row, grid) : new PolynomialSurface([.. row["coefficients"].Split(' ').Select(term => ToTerm(row, term))]));

    private static CoordinateRange ToRange(EmbeddedRow row, string angle) => new(ToCoordinate(row, row[angle]), row.Number($"{angle}Low"), row.Number($"{angle}High"));

    private static JointCoordinate ToCoordinate(EmbeddedRow row, string name) =>
        Enum.TryParse<JointCoordinate>(name.Replace(" ", "", StringComparison.Ordinal), ignoreCase: true, out var coordinate)
            ? coordinate
            : throw row.Fault($"has the angle \"{name}\", which is not known");

    private static Reliability ToReliability(EmbeddedRow row) => row["grade"] switch
    {
        "A" => Reliability.Agreed,
        "B" => Reliability.Plausible,
        "C" => Reliability.SignOnly,
        var other => throw row.Fault($"has the grade \"{other}\" instead of A, B or C"),
    };

    private static (int I, int J, double C) ToTerm(EmbeddedRow row, string term) =>
        term.Split(':') is [var i, var j, var c] && ToPower(i) is { } first && ToPower(j) is { } second
            ? (first, second, row.ToNumber("a coefficient", c))
            : throw row.Fault($"has the term \"{term}\" instead of two powers and a coefficient");

    private static int? ToPower(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var power) && power < 10 ? power : null;

    private static GridSurface ToGrid(EmbeddedRow part, IEnumerable<EmbeddedRow> rows)
    {
        GridRow[] grid = [.. rows.Select(ToGridRow).OrderBy(row => row.Y)];
        return grid.Length > 1 ? new GridSurface(grid) : throw part.Fault($"has no grid in muscle-grids.csv");
    }

    private static GridRow ToGridRow(EmbeddedRow row)
    {
        var points = row.Names.Skip(2).Where(name => row[name].Length > 0).Select(name => (X: row.ToNumber("a plane", name), Length: row.Number(name))).ToList();
        return points.Count > 1 ? new GridRow(row.Number("elevation"), [.. points.Select(point => point.X)], [.. points.Select(point => point.Length)]) : throw row.Fault("has fewer than two lengths");
    }
}
