using System.Globalization;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Advice;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Numbers with units to numbers in the unit that is wanted.</summary>
internal sealed class Numbers(BindContext context)
{
    /// <summary>A number for an attribute, in its unit and on its scale; null when it does not fit (which is reported).</summary>
    public double? For(AttributeDefinition attribute, QuantitySyntax quantity, StatementSyntax statement)
    {
        if (attribute.IsWord)
        {
            context.Report("SR3004", Severity.Error, $"\"{attribute.Name}\" is told in words, not in numbers", statement, quantity.Span, "a number",
                [new Label(attribute.Info.Location, Listed(attribute))]);
            return null;
        }

        return attribute.Kind == AttributeKind.Rating ? Rating(attribute, quantity, statement) : Measure(attribute, quantity, statement);
    }

    /// <summary>A single number for an attribute, as a condition or a worth needs it; null when it does not fit (which is reported).</summary>
    public double? Exactly(AttributeDefinition attribute, ValueSyntax value, StatementSyntax statement) =>
        IsOneNumber(value, statement) ? For(attribute, value.First! with { Span = value.Span }, statement) : null;

    /// <summary>Whether a value is one number, without a range and without doubt; reports when it is not.</summary>
    public bool IsOneNumber(ValueSyntax value, StatementSyntax statement)
    {
        if (value is { First: not null, Spread: null, High: null })
        {
            return true;
        }

        var (headline, label) = value.IsUnknown ? ("A number stands here, and \"unknown\" is none", "unknown") : ("One number stands here, without a range or a doubt", value.High is null ? "a doubt" : "a range");
        context.Error("SR3010", headline, statement, value.Span, label, new Suggestion("write one number; a condition asks for a range with \"is between ... and ...\" and for a missing fact with \"is unknown\""));
        return false;
    }

    /// <summary>Whether the numbers of one value have one unit, written once or with each of them; reports when they have not.</summary>
    public bool HasOneUnit(ValueSyntax value, StatementSyntax statement) => value is { High: null, Spread: null } || HaveOneUnit(value, statement);

    private bool HaveOneUnit(ValueSyntax value, StatementSyntax statement)
    {
        var other = new[] { value.First, value.High, value.Likely, value.Spread }.FirstOrDefault(number => number?.Unit is { } unit && unit != value.Unit);
        if (other is null)
        {
            return true;
        }

        context.Error("SR3003", "One value has one unit", statement, other.Span, $"in {other.Unit}, not in {value.Unit}", new Suggestion($"write all its numbers in {value.Unit}"));
        return false;
    }

    /// <summary>A number in points, given as points or as a word of the house; null when it is neither (which is reported).</summary>
    public UncertainNumber? Points(OperandSyntax operand, StatementSyntax statement)
    {
        if (operand.Name is { } name)
        {
            if (ReportNumberWord(name, statement))
            {
                return null;
            }

            var word = context.Words.Find(name, statement, $"an amount is a number of points or a word of the house, such as \"say {name.Text} means 2 points\"");
            if (word is not null && word.Unit != "points")
            {
                context.Report("SR3003", Severity.Error, $"\"{name.Text}\" is not a number of points", statement, name.Span, "an amount in points stands here", [new Label(word.Info.Location, "defined here")]);
                return null;
            }

            return word is null ? null : UncertainNumber.Certain(word.Number);
        }

        var value = operand.Value!;
        if (!HasOneUnit(value, statement))
        {
            return null;
        }

        if (value.IsUnknown || value.Unit != "points")
        {
            var advice = value.IsUnknown ? "write a number of points" : "write points after the number";
            var gap = new SourceSpan(value.Span.End, 0);
            context.Error("SR3003", "An amount is told in points", statement, value.Span, value.IsUnknown ? "unknown" : value.Unit is null ? "no unit" : $"in {value.Unit}",
                value.Unit is null && !value.IsUnknown ? new Suggestion(advice, new TextEdit(statement.At(gap), " points"), EditSafety.Safe) : new Suggestion(advice));
            return null;
        }

        return Uncertain(value, statement);
    }

    // "give four points": the words were read as the name of an amount.
    private bool ReportNumberWord(NameSyntax name, StatementSyntax statement)
    {
        var word = name.Text.Split(' ')[0];
        if (context.Words.TryFind(name.Text) is not null || NumberWords.Find(word) is not { } digits)
        {
            return false;
        }

        var place = name.Span with { Length = word.Length };
        context.Error("SR1002", "A number is written in digits", statement, place, "", new Suggestion($"write {digits}", new TextEdit(statement.At(place), digits), EditSafety.Safe));
        return true;
    }

    /// <summary>A number with its doubt; null when the doubt makes no sense (which is reported).</summary>
    public UncertainNumber? Uncertain(ValueSyntax value, StatementSyntax statement)
    {
        var (low, high) = (value.First!.Number, value.High?.Number ?? value.First.Number);
        if (value.Spread is { Number: < 0 } spread)
        {
            context.Error("SR3010", "A doubt is a number above 0", statement, spread.Span, "below 0", new Suggestion("write how far the number may be off, such as \"give or take 4\""));
            return null;
        }

        if (value.High is not null && (low >= high || value.Likely is { } top && (top.Number < low || top.Number > high)))
        {
            context.Error("SR3010", "A range goes from its lowest number to its highest, the likeliest between them", statement, value.Span, "", new Suggestion("write for example \"10 to 20 points likely 14\""));
            return null;
        }

        return value switch
        {
            { Spread: { } said } => UncertainNumber.GiveOrTake(low, said.Number),
            { Likely: { } likely } => UncertainNumber.Triangle(low, likely.Number, high),
            { High: not null } => UncertainNumber.Even(low, high),
            _ => UncertainNumber.Certain(low),
        };
    }

    /// <summary>What a closed list of words looks like in a remark.</summary>
    public static string Listed(AttributeDefinition attribute) =>
        attribute.Values.Length <= 8 ? $"one of: {string.Join(", ", attribute.Values)}" : $"one of {attribute.Values.Length} words, the first: {string.Join(", ", attribute.Values.Take(5))}";

    /// <summary>A number as people write it.</summary>
    public static string Plain(double number) => number.ToString("0.######", CultureInfo.InvariantCulture);

    private double? Rating(AttributeDefinition attribute, QuantitySyntax quantity, StatementSyntax statement)
    {
        var (low, high) = attribute.Scale;
        if (quantity.Unit is not null)
        {
            context.Report("SR3003", Severity.Error, $"\"{attribute.Name}\" is a rating and has no unit", statement, quantity.Span, $"in {quantity.Unit}",
                [new Label(attribute.Info.Location, $"rated {Plain(low)} to {Plain(high)}")], new Suggestion("write the number alone", new TextEdit(statement.At(quantity.Span), Plain(quantity.Number))));
            return null;
        }

        if (quantity.Number >= low && quantity.Number <= high)
        {
            return quantity.Number;
        }

        context.Report("SR3002", Severity.Error, $"\"{attribute.Name}\" is rated {Plain(low)} to {Plain(high)}", statement, quantity.Span, "outside the scale",
            [new Label(attribute.Info.Location, "the scale is declared here")], new Suggestion($"write a number from {Plain(low)} to {Plain(high)}"));
        return null;
    }

    private double? Measure(AttributeDefinition attribute, QuantitySyntax quantity, StatementSyntax statement)
    {
        var unit = attribute.Unit ?? "";
        var countable = unit is "repetitions" or "times";
        if (quantity.Unit is null && countable)
        {
            return quantity.Number;
        }

        if (quantity.Unit is not null && UnitConversion.TryConvert(quantity.Number, quantity.Unit, unit, out var converted))
        {
            return converted;
        }

        var written = unit is "%" or "°" ? unit : $" {unit}";
        var gap = new SourceSpan(quantity.Span.End, 0);
        Suggestion[] advice = quantity.Unit is null
            ? [new Suggestion($"write {Plain(quantity.Number)}{written}", new TextEdit(statement.At(gap), written), EditSafety.Safe)]
            : [new Suggestion($"write the number in {unit}")];
        var headline = quantity.Unit is null ? $"\"{attribute.Name}\" is measured in {unit}" : $"\"{attribute.Name}\" is measured in {unit}; {quantity.Unit} cannot be compared with it";
        context.Report("SR3003", Severity.Error, headline, statement, quantity.Span, quantity.Unit is null ? "no unit" : $"in {quantity.Unit}", [new Label(attribute.Info.Location, "the unit is declared here")], advice);
        return null;
    }
}
