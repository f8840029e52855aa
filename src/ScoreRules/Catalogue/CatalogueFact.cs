using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Catalogue;

/// <summary>A fact of a movement with where it comes from.</summary>
/// <param name="Value">The value; unknown when nobody said.</param>
/// <param name="Origin">Where it comes from.</param>
/// <param name="InheritedFrom">Name of the movement that stated it, for inherited facts.</param>
/// <param name="Location">The line or cell that states it, or null.</param>
public sealed record CatalogueFact(FactValue Value, FactOrigin Origin, string? InheritedFrom, SourceLocation? Location)
{
    /// <summary>Nobody said.</summary>
    public static CatalogueFact NotSaid { get; } = new(FactValue.Unknown, FactOrigin.NotSaid, null, null);
}
