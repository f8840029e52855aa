using System.Collections.Immutable;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Diagnostics;

/// <summary>A finding about a text: what is wrong, where, and what would mend it.</summary>
/// <param name="Code">Stable code, <c>SR</c> and four digits; each has a page.</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="Headline">What is wrong, in the coach's words; stands alone in a list.</param>
/// <param name="Primary">The smallest text to change, with a short label.</param>
public sealed record Diagnostic(string Code, Severity Severity, string Headline, Label Primary)
{
    /// <summary>The statement it sits in, such as <c>criterion "stretch"</c>; null outside statements.</summary>
    public string? Within { get; init; }

    /// <summary>The section heading above it, or null.</summary>
    public string? Section { get; init; }

    /// <summary>Places where the other half of the problem stands.</summary>
    public ImmutableArray<Label> Others { get; init; } = [];

    /// <summary>Context: what was found, what is allowed.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>What would mend it, best first.</summary>
    public ImmutableArray<Suggestion> Suggestions { get; init; } = [];

    /// <summary>The place to show first.</summary>
    public SourceLocation Location => Primary.Location;
}
