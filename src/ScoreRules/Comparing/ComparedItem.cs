using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;

namespace ScoreRules.Comparing;

/// <summary>One thing that a house says, ready to be compared with what another says.</summary>
/// <param name="Block">The block it belongs to.</param>
/// <param name="Key">What it is about; things with one key are two versions of one thing.</param>
/// <param name="Says">What it says, as far as that can move a placement; reasons, notes and places in the text are not part of it.</param>
/// <param name="Title">What to call it.</param>
/// <param name="Location">Where it stands.</param>
internal sealed record ComparedItem(RuleBlock Block, string Key, string Says, string Title, SourceLocation Location)
{
    /// <summary>The statement; null for a tier or a fact.</summary>
    public BoundStatement? Statement { get; init; }

    /// <summary>Key of the movement it is about; null for a rule.</summary>
    public string? Movement { get; init; }
}
