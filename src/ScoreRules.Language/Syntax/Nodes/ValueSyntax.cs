using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>A value: a number, a number give or take another, a range, a range with its likeliest number, or unknown.</summary>
/// <param name="Span">The whole value.</param>
/// <param name="First">The number or the low end; null when unknown.</param>
/// <param name="Spread">What follows "give or take": one standard deviation.</param>
/// <param name="High">What follows "to".</param>
/// <param name="Likely">What follows "likely".</param>
internal sealed record ValueSyntax(SourceSpan Span, QuantitySyntax? First, QuantitySyntax? Spread, QuantitySyntax? High, QuantitySyntax? Likely)
{
    /// <summary>Whether the author wrote "unknown".</summary>
    public bool IsUnknown => First is null;

    /// <summary>The unit, wherever in the value it was written.</summary>
    public string? Unit => First?.Unit ?? High?.Unit ?? Likely?.Unit ?? Spread?.Unit;

    /// <summary>The single number that stands for the value: the likeliest, else the middle of the range, else the number.</summary>
    public double Number => Likely?.Number ?? (High is null ? First?.Number ?? double.NaN : (First!.Number + High.Number) / 2);

    /// <summary>The single number with the value's unit, in the value's place. Only of what is known.</summary>
    public QuantitySyntax AsOneNumber() => Spread is null && High is null ? First! : First! with { Number = Number, Unit = Unit, Span = Span };
}
