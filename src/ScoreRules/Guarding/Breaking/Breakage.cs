using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Guarding.Breaking;

/// <summary>A ruleset with one thing broken.</summary>
/// <param name="Kind">How.</param>
/// <param name="Title">The statement, such as <c>criterion "stretch"</c>.</param>
/// <param name="Location">Where it stands.</param>
/// <param name="Ruleset">The whole ruleset, broken.</param>
public sealed record Breakage(BreakageKind Kind, string Title, SourceLocation Location, BoundRuleset Ruleset)
{
    /// <summary>The words of the part that is broken; null when the statement as a whole is.</summary>
    public SourceLocation? Part { get; init; }
}
