using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Catalogue.Csv;

/// <summary>Findings about what a cell says: SR7102 for values that do not fit, SR7104 for numbers that can be read in two ways.</summary>
internal static class ValueFindings
{
    private const string CannotTell = "leave the cell blank, or write \"unknown\", where nobody knows";
    private const int MostListed = 8;

    /// <summary>Words where a number belongs.</summary>
    public static Diagnostic NotANumber(CsvCell cell, AttributeDefinition attribute) =>
        Unfit($"\"{attribute.Name}\" is told in numbers, and {Shown.Text(cell.Text)} is none", cell, "not a number", attribute) with
        {
            Suggestions = [new Suggestion("write the number alone or with its unit"), new Suggestion(CannotTell)],
        };

    /// <summary>A rating that its scale does not have.</summary>
    public static Diagnostic OutsideScale(CsvCell digits, AttributeDefinition attribute)
    {
        var (low, high) = (Shown.Number(attribute.Scale.Low), Shown.Number(attribute.Scale.High));
        return Unfit($"\"{attribute.Name}\" is rated {low} to {high}", digits, "outside the scale", attribute) with
        {
            Suggestions = [new Suggestion($"write a number from {low} to {high}")],
        };
    }

    /// <summary>A rating with a unit.</summary>
    public static Diagnostic UnitOnRating(Numeral numeral, AttributeDefinition attribute)
    {
        var whole = numeral.Digits with { Span = numeral.Digits.Span.Cover(numeral.Rest.Span) };
        return Unfit($"\"{attribute.Name}\" is a rating: a number with nothing behind it", numeral.Rest, "too much", attribute) with
        {
            Suggestions = [CellEdit.Replace("write the number alone", whole.Location, numeral.Digits.Text, EditSafety.Shown)],
        };
    }

    /// <summary>A measure in a unit that is not its own and cannot be converted into it.</summary>
    public static Diagnostic OtherUnit(CsvCell unit, AttributeDefinition attribute) =>
        Unfit($"\"{attribute.Name}\" is {Shown.Allowed(attribute)}, and {Shown.Text(unit.Text)} cannot be converted into that", unit, "another unit, or none", attribute) with
        {
            Suggestions = [new Suggestion($"write the number {(attribute.Unit is null ? "alone" : $"in {attribute.Unit}")}")],
        };

    /// <summary>A word that the attribute does not have.</summary>
    public static Diagnostic UnknownWord(CsvCell word, AttributeDefinition attribute)
    {
        var finding = (CellWords.Says(word, CellWords.Nothing), attribute.Kind) switch
        {
            (true, AttributeKind.OneOf) => Unfit($"\"nothing\" is said of lists, and \"{attribute.Name}\" has one value", word, "not a list", attribute),
            (true, _) => Unfit($"\"nothing\" stands beside words in this list for \"{attribute.Name}\"", word, "alone or not at all", attribute),
            _ => Unfit($"{Shown.Text(word.Text)} is not a word for \"{attribute.Name}\"", word, "not in its list", attribute),
        };
        var near = NameSuggester.Nearest(word.Text, attribute.Values);
        return finding with { Suggestions = near.IsEmpty ? [new Suggestion(CannotTell)] : [.. Meant(word, near)] };
    }

    /// <summary>A name that is no target.</summary>
    public static Diagnostic UnknownTarget(CsvCell word, IReadOnlyList<TargetDefinition> targets)
    {
        var names = targets.Select(target => target.Name).ToList();
        return Error("SR7102", $"{Shown.Text(word.Text)} is not a target", word, "not declared anywhere") with
        {
            Notes = names.Count is 0 or > MostListed ? [] : [$"targets of this house: {string.Join(", ", names)}"],
            Suggestions = [.. Meant(word, NameSuggester.Nearest(word.Text, names))],
        };
    }

    /// <summary>One word twice in a list.</summary>
    public static Diagnostic WordTwice(CsvCell second, CsvCell first) =>
        Error("SR7102", $"{Shown.Text(second.Text)} stands twice in this cell", second, "second time") with
        {
            Others = [new Label(first.Location, "first time")],
            Suggestions = [new Suggestion("take one of them out")],
        };

    /// <summary>A list of separators only.</summary>
    public static Diagnostic NoWord(CsvCell cell, AttributeDefinition attribute) =>
        Unfit($"This list for \"{attribute.Name}\" holds no word", cell, "separators only", attribute) with
        {
            Suggestions = [new Suggestion("write \"nothing\" where there is none"), new Suggestion(CannotTell)],
        };

    /// <summary>SR7104: a number whose marks leave open where its decimals begin.</summary>
    public static Diagnostic AmbiguousNumber(Numeral numeral, AttributeDefinition attribute) =>
        Error("SR7104", $"It is not clear which number {Shown.Text(numeral.Digits.Text)} means", numeral.Digits, "where do the decimals begin?") with
        {
            Others = [Shown.Declared(attribute)],
            Suggestions = [.. numeral.Meanings().Select(meaning => CellEdit.Replace($"did you mean {meaning}?", numeral.Digits.Location, meaning, EditSafety.Shown))],
        };

    private static IEnumerable<Suggestion> Meant(CsvCell word, IReadOnlyList<string> near) =>
        near.Select(name => CellEdit.Replace($"did you mean \"{name}\"?", word.Location, name, near.Count == 1 ? EditSafety.Safe : EditSafety.Shown));

    private static Diagnostic Unfit(string headline, CsvCell place, string label, AttributeDefinition attribute) =>
        Error("SR7102", headline, place, label) with { Others = [Shown.Declared(attribute)] };

    private static Diagnostic Error(string code, string headline, CsvCell place, string label) =>
        new(code, Severity.Error, headline, new Label(place.Location, label));
}
