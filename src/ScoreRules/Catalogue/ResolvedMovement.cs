using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Catalogue;

/// <summary>A movement with what it takes over filled in.</summary>
/// <param name="Declaration">The movement as declared.</param>
/// <param name="Original">The movement it is like, or null.</param>
/// <param name="Trains">Targets it trains, stated or taken over.</param>
/// <param name="Facts">Facts by attribute index.</param>
/// <param name="IsTrainsSaid">Whether it or a movement it is like says what it trains, even if no target was understood.</param>
/// <param name="HasCutLink">Whether a reported fault in its chain of <c>like</c> hides what it would take over.</param>
internal sealed record ResolvedMovement(
    MovementDeclaration Declaration,
    ResolvedMovement? Original,
    ImmutableArray<TargetDefinition> Trains,
    ImmutableArray<CatalogueFact> Facts,
    bool IsTrainsSaid,
    bool HasCutLink)
{
    /// <summary>Facts that hold for some targets only.</summary>
    public TargetFacts TargetFacts { get; init; } = TargetFacts.None;

    /// <summary>Its joints, load and where the load comes from, stated or taken over.</summary>
    public ImmutableArray<GeometryLine> Geometry { get; init; } = [];

    /// <summary>Whether it or a movement it is like accepts an even load.</summary>
    public bool AcceptsEvenLoad => Declaration.AcceptsEvenLoad || (Original?.AcceptsEvenLoad ?? false);

    /// <summary>Whether it trains no target and no finding has explained why.</summary>
    public bool LacksTarget => Trains.IsEmpty && !IsTrainsSaid && !HasCutLink;

    /// <summary>The movement as the catalogue holds it.</summary>
    public Movement ToMovement(int index) =>
        new(Declaration.Name, index, Declaration.Synonyms, Trains, Facts, Original?.Declaration.Name, Declaration.Info.Location)
        {
            TargetFacts = TargetFacts,
            Geometry = Geometry,
            AcceptsEvenLoad = AcceptsEvenLoad,
            IsWhole = Declaration.IsWhole && !HasCutLink,
        };
}
