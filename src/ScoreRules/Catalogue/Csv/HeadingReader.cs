using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Catalogue.Csv;

/// <summary>Reads the first row: which column says what.</summary>
internal sealed class HeadingReader(ColumnNames names, DiagnosticBag findings)
{
    /// <summary>The columns, or null when no column names the movements (which is reported).</summary>
    public ImmutableArray<CsvColumn>? Read(CsvRow heading)
    {
        var columns = heading.Cells.Select(ToColumn).ToImmutableArray();
        foreach (var same in columns.Where(column => column.Kind > ColumnKind.Unheaded).GroupBy(column => (column.Kind, column.Attribute?.Index)))
        {
            findings.AddRange(same.Skip(1).Select(second => CsvFindings.ColumnTwice(second.Heading, same.First().Heading)));
        }

        if (columns.Any(column => column.Kind == ColumnKind.Movement))
        {
            return FirstOfEach(columns);
        }

        // A heading that only misspells "movement" has been reported with that very advice.
        if (!columns.Any(column => column.Kind == ColumnKind.Unusable && names.Nearest(column.Heading.Text).Contains("movement")))
        {
            findings.Add(CsvFindings.NoMovementColumn(heading.Cells[0].Location));
        }

        return null;
    }

    private CsvColumn ToColumn(CsvCell heading)
    {
        if (heading.IsBlank)
        {
            return new CsvColumn(ColumnKind.Unheaded, heading);
        }

        var (kind, attribute) = names.Find(heading.Text);
        if (kind == ColumnKind.Unusable)
        {
            findings.Add(CsvFindings.UnknownColumn(heading, names.Nearest(heading.Text)));
        }
        else if (attribute is { IsWorkedOut: true } or { IsAboutThePerson: true })
        {
            findings.Add(CsvFindings.NotAColumn(heading, attribute));
            return new CsvColumn(ColumnKind.Unusable, heading);
        }

        return new CsvColumn(kind, heading, attribute);
    }

    private static ImmutableArray<CsvColumn> FirstOfEach(ImmutableArray<CsvColumn> columns)
    {
        var seen = new HashSet<(ColumnKind, int?)>();
        return
        [
            .. columns.Select(column => column.Kind <= ColumnKind.Unheaded || seen.Add((column.Kind, column.Attribute?.Index))
                ? column
                : column with { Kind = ColumnKind.Unusable }),
        ];
    }
}
