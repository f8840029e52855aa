using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Sizes of bodies, loads and machines, each in one unit.</summary>
internal sealed class Sizes(BindContext context)
{
    /// <summary>The number in a unit, or null when it has none or another (which is reported).</summary>
    /// <param name="quantity">As written.</param>
    /// <param name="unit">The unit wanted.</param>
    /// <param name="what">What is measured, with its article, at the beginning of a sentence.</param>
    /// <param name="statement">The statement it stands in.</param>
    public double? In(QuantitySyntax quantity, string unit, string what, StatementSyntax statement)
    {
        if (quantity.Unit is { } written && UnitConversion.TryConvert(quantity.Number, written, unit, out var converted))
        {
            return converted;
        }

        var end = new SourceSpan(quantity.Span.End, 0);
        var attached = unit == "°" ? unit : $" {unit}";
        context.Error("SR3003", $"{what} is measured in {unit}", statement, quantity.Span, quantity.Unit is null ? "no unit" : $"in {quantity.Unit}",
            quantity.Unit is null
                ? new Suggestion($"write {Numbers.Plain(quantity.Number)}{attached}", new TextEdit(statement.At(end), attached))
                : new Suggestion($"write the number in {unit}"));
        return null;
    }

    /// <summary>The same for a number that lies within bounds; reports when it does not.</summary>
    public double? Within(QuantitySyntax quantity, string unit, string what, double low, double high, StatementSyntax statement)
    {
        if (In(quantity, unit, what, statement) is not { } number)
        {
            return null;
        }

        if (number >= low && number <= high)
        {
            return number;
        }

        context.Error("SR7204", $"{what} lies from {Numbers.Plain(low)} to {Numbers.Plain(high)} {unit}", statement, quantity.Span, number < low ? "less than that" : "more than that",
            new Suggestion($"write a number from {Numbers.Plain(low)} to {Numbers.Plain(high)} {unit}"));
        return null;
    }
}
