using nietras.SeparatedValues;

namespace ScoreRules.Tests.Support;

/// <summary>Reads outside numbers: CSV files in <c>Reference/</c>, each row with its source.</summary>
internal static class ReferenceTable
{
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Rows(string file)
    {
        using var reader = Sep.New(',').Reader(options => options with { Unescape = true }).FromFile(Repository.PathOf("tests", "ScoreRules.Tests", "Reference", file));
        var names = reader.Header.ColNames;
        var rows = new List<IReadOnlyDictionary<string, string>>();
        foreach (var row in reader)
        {
            var cells = new Dictionary<string, string>(StringComparer.Ordinal);
            foreach (var name in names)
            {
                cells[name] = row[name].ToString();
            }

            rows.Add(cells);
        }

        return rows;
    }
}
