using System.Globalization;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue.Csv;

/// <summary>Findings about the shape of a table: headings, rows and quotes.</summary>
internal static class CsvFindings
{
    /// <summary>SR7101: a heading that is neither a fixed one nor an attribute.</summary>
    public static Diagnostic UnknownColumn(CsvCell heading, IReadOnlyList<string> near)
    {
        var safety = near.Count == 1 ? EditSafety.Safe : EditSafety.Shown;
        return Error("SR7101", $"{Shown.Text(heading.Text)} is not something a movement can be described by", heading.Location, "no attribute has this name") with
        {
            Notes = ["besides attributes, a heading may be: movement, also known as, trains, like, source, note"],
            Suggestions = near.Count == 0
                ? [new Suggestion("declare the attribute in rule text, or take the column out")]
                : [.. near.Select(name => CellEdit.Replace($"did you mean \"{name}\"?", heading.Location, name, safety))],
        };
    }

    /// <summary>SR7101: something written in a column without a heading.</summary>
    public static Diagnostic Unheaded(CsvCell cell, CsvCell heading) =>
        Error("SR7101", "This column has no heading, so nobody knows what its cells say", cell.Location, "the first cell that is not blank") with
        {
            Others = [new Label(heading.Location, "no heading here")],
            Suggestions = [new Suggestion("give the column a heading, or empty it")],
        };

    /// <summary>SR7103: a row with more or fewer cells than there are headings.</summary>
    public static Diagnostic CellCount(CsvRow row, CsvRow heading)
    {
        var source = heading.Cells[0].Source;
        var (has, wanted) = (row.Cells.Length, heading.Cells.Length);
        var place = has > wanted
            ? row.Cells[wanted].Span.Cover(row.Cells[^1].Span)
            : new SourceSpan(row.Span.End, 0);
        return Error("SR7103", $"This row has {Cells(has)}, but the heading has {Number(wanted)}", source.At(place), has > wanted ? "no heading above this" : "the row ends here") with
        {
            Others = [new Label(source.At(heading.Span), $"{Cells(wanted)}")],
            Suggestions = [new Suggestion(has > wanted ? "put a cell that holds the separator in double quotes" : "add the missing cells; a cell may be blank")],
        };
    }

    /// <summary>SR7105: a row without a movement.</summary>
    public static Diagnostic NoName(SourceLocation cell, CsvCell heading) =>
        Error("SR7105", "This row names no movement", cell, "blank") with
        {
            Others = [new Label(heading.Location, "the movement's name stands in this column")],
            Suggestions = [new Suggestion("write the movement's name, or empty the row")],
        };

    /// <summary>SR7106: another name of a movement that some movement already has.</summary>
    public static Diagnostic SynonymTwice(SourceLocation second, SourceLocation first) => NameTwice(second, first) with
    {
        Suggestions = [new Suggestion("leave it out here"), new Suggestion("or, if it is only the part of a name before a comma, write | behind the whole name")],
    };

    /// <summary>SR7106: a name that an earlier row has already given.</summary>
    public static Diagnostic NameTwice(SourceLocation second, SourceLocation first) =>
        Error("SR7106", $"{Shown.Text(second.Text)} is the name of two movements", second, "second time") with
        {
            Others = [new Label(first, "first time")],
            Suggestions = [new Suggestion("give one of them another name, or keep one row")],
        };

    /// <summary>SR7107: an attribute that no table can state.</summary>
    public static Diagnostic NotAColumn(CsvCell heading, AttributeDefinition attribute)
    {
        var why = attribute.IsWorkedOut ? "is worked out" : "is about the person";
        return Error("SR7107", $"\"{attribute.Name}\" {why}, so a table of movements cannot state it", heading.Location, "") with
        {
            Others = [new Label(attribute.Info.Location, "declared here")],
            Suggestions = [new Suggestion("take the column out")],
        };
    }

    /// <summary>SR7108: no column with the movements' names.</summary>
    public static Diagnostic NoMovementColumn(SourceLocation place) =>
        Error("SR7108", "No column of this table has the heading \"movement\"", place, "the headings are expected here") with
        {
            Suggestions = [new Suggestion("let the first row name the columns, one of them \"movement\"")],
        };

    /// <summary>SR7109: quotes that do not enclose a cell.</summary>
    public static Diagnostic Quotes(SourceText source, (SourceSpan Place, string Headline, string Advice) fault) =>
        Error("SR7109", fault.Headline, source.At(fault.Place), "") with { Suggestions = [new Suggestion(fault.Advice)] };

    /// <summary>SR7109: a row too long to be one.</summary>
    public static Diagnostic RowTooLong(SourceLocation place) =>
        Error("SR7109", "The row that starts here is longer than 16 million characters", place, "from here on nothing was read") with
        {
            Suggestions = [new Suggestion("look for a double quote that is not closed")],
        };

    /// <summary>SR7110: two columns that say the same thing.</summary>
    public static Diagnostic ColumnTwice(CsvCell second, CsvCell first) =>
        Error("SR7110", $"Two columns have the heading {Shown.Text(second.Text)}", second.Location, "second time") with
        {
            Others = [new Label(first.Location, "first time")],
            Suggestions = [new Suggestion("keep one of the two columns")],
        };

    private static Diagnostic Error(string code, string headline, SourceLocation place, string label) =>
        new(code, Severity.Error, headline, new Label(place, label));

    private static string Cells(int count) => count == 1 ? "1 cell" : $"{Number(count)} cells";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
