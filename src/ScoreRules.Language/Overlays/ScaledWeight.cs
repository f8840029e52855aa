using System.Globalization;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Overlays;

/// <summary>Writes a line <c>counts</c> with every number of it multiplied.</summary>
internal static class ScaledWeight
{
    /// <summary>The stretches of a line, in order: copied where the words are null.</summary>
    /// <param name="line">The line of the base.</param>
    /// <param name="value">Its weight.</param>
    /// <param name="factor">How many times as much, above 0.</param>
    public static IEnumerable<(SourceSpan Span, string? Words)> Pieces(ClauseSyntax line, ValueSyntax value, double factor)
    {
        var at = line.Span.Start;
        foreach (var number in new[] { value.First, value.Spread, value.High, value.Likely }.OfType<QuantitySyntax>().OrderBy(number => number.Span.Start))
        {
            yield return (SourceSpan.FromBounds(at, number.Span.Start), null);
            yield return (number.Span, Written(number.Number * factor) + (number.Unit is null ? "" : " " + number.Unit));
            at = number.Span.End;
        }

        yield return (SourceSpan.FromBounds(at, line.Span.End), null);
    }

    // Fifteen digits: 26 times 0.1 is written 2.6.
    private static string Written(double number) => number.ToString("0.##########", CultureInfo.InvariantCulture);
}
