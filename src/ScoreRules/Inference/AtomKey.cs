using System.Collections.Immutable;
using ScoreRules.Language;
using ScoreRules.Language.Binding;

namespace ScoreRules.Inference;

/// <summary>What a test asks, by value: two rules that ask the same share one answer, wherever they stand.</summary>
/// <param name="Attribute">Index of the attribute.</param>
/// <param name="Comparison">How it is compared.</param>
/// <param name="Number">The number, or the low end.</param>
/// <param name="High">The high end.</param>
/// <param name="Codes">The words.</param>
internal sealed record AtomKey(int Attribute, Comparison Comparison, double Number, double High, ImmutableArray<int> Codes)
{
    /// <summary>The key of a test.</summary>
    public static AtomKey Of(AttributeTest test) => new(test.Attribute.Index, test.Comparison, test.Number, test.High, test.Codes);

    /// <inheritdoc/>
    public bool Equals(AtomKey? other) =>
        other is not null && Attribute == other.Attribute && Comparison == other.Comparison
        && Number.Equals(other.Number) && High.Equals(other.High) && Codes.SequenceEqual(other.Codes);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Attribute, Comparison, Number, High, Codes.Length, Codes.FirstOrDefault());
}
