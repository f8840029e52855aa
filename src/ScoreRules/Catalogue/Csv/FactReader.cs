using ScoreRules.Language.Binding;

namespace ScoreRules.Catalogue.Csv;

/// <summary>Reads the cells that state facts.</summary>
internal static class FactReader
{
    /// <summary>
    /// What a cell states, or null when it is blank or cannot be understood (which is reported). Before its value a cell may
    /// say <c>but</c>, <c>at a guess</c> or both, as rule text does.
    /// </summary>
    public static StatedFact? Read(AttributeDefinition attribute, CsvCell cell, RowReport report)
    {
        if (cell.IsBlank)
        {
            return null;
        }

        var (isBut, isGuess, value) = CellWords.Open(cell);
        return ReadValue(attribute, value, isGuess, report) is { } read ? new StatedFact(attribute, read, isBut, isGuess, cell.Location) : null;
    }

    private static FactValue? ReadValue(AttributeDefinition attribute, CsvCell value, bool isGuess, RowReport report) =>
        CellWords.Says(value, CellWords.Unknown) ? FactValue.Unknown : attribute.Kind switch
        {
            AttributeKind.OneOf => WordReader.ReadOne(attribute, value, report),
            AttributeKind.SomeOf => WordReader.ReadSome(attribute, value, report),
            _ => NumberReader.Read(attribute, value, isGuess, report),
        };
}
