using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue.Csv;

/// <summary>
/// Reads movements from a table as spreadsheets save it. The first row names the columns: <c>movement</c>, and where wanted
/// <c>also known as</c>, <c>trains</c>, <c>like</c>, <c>source</c>, <c>note</c> and attributes. A blank cell is unknown,
/// <c>nothing</c> an empty list.
/// </summary>
public static class CsvCatalogueReader
{
    /// <summary>The movements of a table, in its order. Every fact's place is the cell that states it.</summary>
    /// <param name="path">Name to print in messages.</param>
    /// <param name="text">The table; <c>;</c>, <c>,</c> or a tab separates its cells.</param>
    /// <param name="attributes">The house's attributes.</param>
    /// <param name="targets">The house's targets.</param>
    /// <param name="findings">Receives SR7101 to SR7110.</param>
    public static ImmutableArray<MovementDeclaration> Read(
        string path, string text, IReadOnlyList<AttributeDefinition> attributes, IReadOnlyList<TargetDefinition> targets, DiagnosticBag findings)
    {
        var source = new SourceText(path, text);
        using var rows = new CsvRows(source, Separators.Guess(text), findings).Read().GetEnumerator();
        if (!rows.MoveNext())
        {
            findings.Add(CsvFindings.NoMovementColumn(source.At(new SourceSpan(0, 0))));
            return [];
        }

        var heading = rows.Current;
        var columns = heading.IsFaulty ? null : new HeadingReader(new ColumnNames(attributes), findings).Read(heading);
        return columns is { } known ? ReadRows(rows, heading, known, targets, findings) : [];
    }

    private static ImmutableArray<MovementDeclaration> ReadRows(
        IEnumerator<CsvRow> rows, CsvRow heading, ImmutableArray<CsvColumn> columns, IReadOnlyList<TargetDefinition> targets, DiagnosticBag findings)
    {
        var names = new NameRegister(findings);
        var reader = new RowReader(columns, targets, names, findings);
        var movements = ImmutableArray.CreateBuilder<MovementDeclaration>();
        while (rows.MoveNext())
        {
            if (rows.Current.IsFaulty)
            {
                continue;
            }

            if (rows.Current.Cells.Length != columns.Length)
            {
                findings.Add(CsvFindings.CellCount(rows.Current, heading));
            }
            else if (reader.Read(rows.Current) is { } movement)
            {
                movements.Add(movement);
            }
        }

        names.CheckSynonyms();
        return movements.ToImmutable();
    }
}
