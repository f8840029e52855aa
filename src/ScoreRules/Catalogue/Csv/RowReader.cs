using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Catalogue.Csv;

/// <summary>Makes movements out of rows.</summary>
internal sealed class RowReader(
    ImmutableArray<CsvColumn> columns, IReadOnlyList<TargetDefinition> targets, NameRegister names, DiagnosticBag findings)
{
    private readonly int nameColumn = columns.ToList().FindIndex(column => column.Kind == ColumnKind.Movement);
    private readonly HashSet<int> reportedUnheaded = [];

    /// <summary>The movement of a row with as many cells as there are columns, or null without a new name (which is reported).</summary>
    public MovementDeclaration? Read(CsvRow row)
    {
        var name = row.Cells[nameColumn];
        if (name.IsBlank)
        {
            findings.Add(CsvFindings.NoName(name.Location, columns[nameColumn].Heading));
            return null;
        }

        if (!names.Declare(name))
        {
            return null;
        }

        var info = new StatementInfo(ButAdvice.RowKind, name.Text, name.Location) { Origin = TextOf(row, ColumnKind.Source) };
        return Fill(new MovementDeclaration(info), name, row);
    }

    private MovementDeclaration Fill(MovementDeclaration movement, CsvCell name, CsvRow row)
    {
        var report = new RowReport(findings, movement.Info.Title);
        CheckUnheaded(row);
        var facts = columns.Zip(row.Cells).Where(pair => pair.First.Kind == ColumnKind.Fact).Select(pair => FactReader.Read(pair.First.Attribute!, pair.Second, report));
        movement = movement with { Facts = [.. facts.OfType<StatedFact>()] };
        if (CellOf(row, ColumnKind.AlsoKnownAs) is { } synonyms)
        {
            movement = movement with { Synonyms = [.. CellList.SplitNames(synonyms).Select(synonym => Noted(synonym, name))] };
        }

        if (CellOf(row, ColumnKind.Trains) is { } trains)
        {
            movement = movement with { Trains = WordReader.ReadTargets(targets, trains, report), TrainsLocation = trains.Location };
        }

        return CellOf(row, ColumnKind.Like) is { } like ? movement with { Like = like.Text, LikeLocation = like.Location } : movement;
    }

    private string Noted(CsvCell synonym, CsvCell name)
    {
        names.Note(synonym, name);
        return synonym.Text;
    }

    private void CheckUnheaded(CsvRow row)
    {
        for (var i = 0; i < columns.Length; i++)
        {
            if (columns[i].Kind == ColumnKind.Unheaded && !row.Cells[i].IsBlank && reportedUnheaded.Add(i))
            {
                findings.Add(CsvFindings.Unheaded(row.Cells[i], columns[i].Heading));
            }
        }
    }

    private string? TextOf(CsvRow row, ColumnKind kind) => CellOf(row, kind)?.Text;

    private CsvCell? CellOf(CsvRow row, ColumnKind kind)
    {
        for (var i = 0; i < columns.Length; i++)
        {
            if (columns[i].Kind == kind)
            {
                return row.Cells[i].IsBlank ? null : row.Cells[i];
            }
        }

        return null;
    }
}
