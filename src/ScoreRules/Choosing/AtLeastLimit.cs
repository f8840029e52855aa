using System.Collections.Immutable;

namespace ScoreRules.Choosing;

/// <summary>So many at least among some.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Name">The author's words.</param>
/// <param name="Among">The candidates that count.</param>
/// <param name="Least">How many at least.</param>
public sealed record AtLeastLimit(ChoiceLimitKind Kind, string Name, ImmutableArray<int> Among, int Least) : ChoiceLimit(Kind, Name)
{
    /// <inheritdoc/>
    public override bool Allows(IReadOnlyCollection<int> chosen) => chosen.Count(Among.Contains) >= Least;
}
