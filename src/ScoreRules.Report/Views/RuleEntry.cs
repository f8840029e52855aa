using ScoreRules.Language.Binding;

namespace ScoreRules.Report.Views;

/// <summary>One rule with its text.</summary>
/// <param name="Statement">The rule.</param>
/// <param name="Id">Its anchor on the page.</param>
/// <param name="Text">Its lines as the author wrote them.</param>
/// <param name="Place">File and line.</param>
public sealed record RuleEntry(BoundStatement Statement, string Id, string Text, string Place)
{
    /// <summary>What houses that build on its own changed about it; empty for nothing.</summary>
    public string Amended { get; init; } = "";

    /// <summary>In how many placements it has its effect; null for a rule that is not about single movements.</summary>
    public int? Touches { get; init; }
}
