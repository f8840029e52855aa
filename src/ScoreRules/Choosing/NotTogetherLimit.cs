using System.Collections.Immutable;

namespace ScoreRules.Choosing;

/// <summary>Pairs that may not both be chosen.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Name">The author's words.</param>
/// <param name="Pairs">The pairs.</param>
public sealed record NotTogetherLimit(ChoiceLimitKind Kind, string Name, ImmutableArray<(int First, int Second)> Pairs) : ChoiceLimit(Kind, Name)
{
    /// <inheritdoc/>
    public override bool Allows(IReadOnlyCollection<int> chosen) => !Pairs.Any(pair => chosen.Contains(pair.First) && chosen.Contains(pair.Second));
}
