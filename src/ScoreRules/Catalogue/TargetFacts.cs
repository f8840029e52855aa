using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue;

/// <summary>Facts of a movement that hold for some targets only, such as a stretch that differs between two muscles it trains.</summary>
/// <param name="ByAttribute">By the attribute's index and the key of the target's name.</param>
public sealed record TargetFacts(ImmutableDictionary<(int Attribute, string Target), CatalogueFact> ByAttribute)
{
    /// <summary>None.</summary>
    public static TargetFacts None { get; } = new(ImmutableDictionary<(int, string), CatalogueFact>.Empty);

    /// <summary>The fact for a target, or for the target that it is part of; null when what is said of the movement as a whole holds.</summary>
    public CatalogueFact? Of(int attribute, TargetDefinition target) =>
        ByAttribute.IsEmpty ? null
        : ByAttribute.GetValueOrDefault((attribute, NameText.Key(target.Name))) ?? (target.Parent is { } parent ? ByAttribute.GetValueOrDefault((attribute, NameText.Key(parent))) : null);
}
