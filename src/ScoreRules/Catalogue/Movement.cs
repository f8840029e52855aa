using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue;

/// <summary>A movement with all its facts, stated and inherited.</summary>
/// <param name="Name">Its name as declared.</param>
/// <param name="Index">Position in the catalogue.</param>
/// <param name="Synonyms">Other names.</param>
/// <param name="Trains">Targets it trains.</param>
/// <param name="Facts">Its facts by attribute index; never null, <see cref="CatalogueFact.NotSaid"/> where nobody said.</param>
/// <param name="Like">The movement it is like, or null.</param>
/// <param name="Location">Where it is declared.</param>
public sealed record Movement(
    string Name,
    int Index,
    ImmutableArray<string> Synonyms,
    ImmutableArray<TargetDefinition> Trains,
    ImmutableArray<CatalogueFact> Facts,
    string? Like,
    SourceLocation Location)
{
    /// <summary>Facts that hold for some targets only; they stand before <see cref="Facts"/>.</summary>
    public TargetFacts TargetFacts { get; init; } = TargetFacts.None;

    /// <summary>Its joints, load and where the load comes from, stated or taken over; each name once, what moves in the order of the text.</summary>
    public ImmutableArray<GeometryLine> Geometry { get; init; } = [];

    /// <summary>Whether it, or a movement it is like, accepts an even load where a cam is not recorded.</summary>
    public bool AcceptsEvenLoad { get; init; }

    /// <summary>Whether everything that it states or takes over was understood; false when a fault in it was reported.</summary>
    public bool IsWhole { get; init; } = true;
}
