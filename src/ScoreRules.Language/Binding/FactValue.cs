using System.Collections.Immutable;

namespace ScoreRules.Language.Binding;

/// <summary>The value of one attribute of one movement.</summary>
/// <param name="IsKnown">False for unknown.</param>
/// <param name="Number">The number of a rating or measure.</param>
/// <param name="Low">Low end of its doubt; equals <paramref name="Number"/> when certain.</param>
/// <param name="High">High end of its doubt.</param>
/// <param name="Codes">The word or words, as codes, rising; empty and known means nothing.</param>
public sealed record FactValue(bool IsKnown, double Number, double Low, double High, ImmutableArray<int> Codes)
{
    /// <summary>Not known.</summary>
    public static FactValue Unknown { get; } = new(false, double.NaN, double.NaN, double.NaN, []);

    /// <summary>A number without doubt.</summary>
    public static FactValue Of(double number) => new(true, number, number, number, []);

    /// <summary>Words.</summary>
    public static FactValue Of(ImmutableArray<int> codes) => new(true, double.NaN, double.NaN, double.NaN, codes);
}
