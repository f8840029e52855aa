using System.Collections.Immutable;

namespace ScoreRules.Catalogue;

/// <summary>What a ranking knows beside the catalogue.</summary>
/// <param name="Audience">Codes of the words that the profile says of the person; empty means known to be none of them.</param>
/// <param name="Likeness">Likeness to the benchmark by row, in % from 0 to 100, NaN where it cannot be told; null when nobody computed it.</param>
public sealed record FactTableInputs(ImmutableArray<int> Audience, IReadOnlyList<double>? Likeness)
{
    /// <summary>What mechanics derives for a row; null when nobody derives anything. Asked only for attributes that are read.</summary>
    public Func<PlacementRow, Language.Binding.AttributeDefinition, CatalogueFact>? Derived { get; init; }
}
