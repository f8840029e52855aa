using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Comparing;

/// <summary>Something that one house says and the other says differently or not at all.</summary>
/// <param name="Block">The block it belongs to.</param>
/// <param name="Title">What it is called, such as <c>criterion "stretch"</c>.</param>
/// <param name="Old">Where the old house says it; null when it is added.</param>
/// <param name="New">Where the new house says it; null when it is taken out.</param>
public sealed record RuleChange(RuleBlock Block, string Title, SourceLocation? Old, SourceLocation? New)
{
    /// <summary>The statement of the old house; null for a fact, a tier, or what it does not say.</summary>
    public BoundStatement? OldStatement { get; init; }

    /// <summary>The statement of the new house; null for a fact, a tier, or what it does not say.</summary>
    public BoundStatement? NewStatement { get; init; }

    /// <summary>Key of the movement it is about, as names are compared; null for a rule.</summary>
    public string? Movement { get; init; }
}
