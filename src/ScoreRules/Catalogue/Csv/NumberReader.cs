using ScoreRules.Language.Binding;

namespace ScoreRules.Catalogue.Csv;

/// <summary>Reads the cells of ratings and measures.</summary>
internal static class NumberReader
{
    /// <summary>The value in the attribute's unit, or null when the cell does not tell it (which is reported).</summary>
    /// <param name="attribute">A rating or a measure.</param>
    /// <param name="cell">The cell without the words before its value; not blank.</param>
    /// <param name="isGuess">Whether the author is guessing: a rating then may be one step off either way.</param>
    /// <param name="report">Where findings go.</param>
    public static FactValue? Read(AttributeDefinition attribute, CsvCell cell, bool isGuess, RowReport report)
    {
        if (Numeral.At(cell) is not { } numeral)
        {
            report.Add(ValueFindings.NotANumber(cell, attribute));
            return null;
        }

        if (numeral.IsAmbiguous(mayBeThousands: attribute.Kind == AttributeKind.Measure))
        {
            report.Add(ValueFindings.AmbiguousNumber(numeral, attribute));
            return null;
        }

        var number = attribute.Kind == AttributeKind.Rating ? Rating(attribute, numeral, report) : Measure(attribute, numeral, report);
        var spread = isGuess && attribute.Kind == AttributeKind.Rating ? 1 : 0;
        return number is { } known ? new FactValue(true, known, known - spread, known + spread, []) : null;
    }

    private static double? Rating(AttributeDefinition attribute, Numeral numeral, RowReport report)
    {
        if (!numeral.Rest.IsBlank)
        {
            report.Add(ValueFindings.UnitOnRating(numeral, attribute));
            return null;
        }

        if (numeral.Value >= attribute.Scale.Low && numeral.Value <= attribute.Scale.High)
        {
            return numeral.Value;
        }

        report.Add(ValueFindings.OutsideScale(numeral.Digits, attribute));
        return null;
    }

    private static double? Measure(AttributeDefinition attribute, Numeral numeral, RowReport report)
    {
        if (numeral.Rest.IsBlank)
        {
            return numeral.Value;
        }

        if (UnitConversion.TryConvert(numeral.Value, Canonical(numeral.Rest.Text), attribute.Unit ?? "", out var converted))
        {
            return converted;
        }

        report.Add(ValueFindings.OtherUnit(numeral.Rest, attribute));
        return null;
    }

    // The same spellings that rule text accepts.
    private static string Canonical(string unit) => unit.ToLowerInvariant() switch
    {
        "point" => "points",
        "part" => "parts",
        "degrees" => "°",
        var other => other,
    };
}
