using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Overlays;

/// <summary>What a house changes or drops of the house it builds on, with the places in both.</summary>
/// <param name="Action">Whether it changes or drops.</param>
/// <param name="Kind">The kind of thing, such as "criterion" or "expectation".</param>
/// <param name="Title">What is changed, such as <c>criterion "stretch"</c>.</param>
/// <param name="House">The house that changes it.</param>
/// <param name="Place">Where it says so.</param>
/// <param name="BaseHouse">The house that declares it.</param>
/// <param name="BasePlace">Where it is declared.</param>
public sealed record Amendment(AmendmentAction Action, string Kind, string Title, string House, SourceLocation Place, string BaseHouse, SourceLocation BasePlace)
{
    /// <summary>The lines that differ; of something dropped, none.</summary>
    public ImmutableArray<AmendedLine> Lines { get; init; } = [];

    /// <summary>Why, in the author's words.</summary>
    public string? Because { get; init; }
}
