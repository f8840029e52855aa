using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Overlays;

/// <summary>The smallest part of a statement that a change replaces as a whole: a line, or one fact of a line of facts.</summary>
/// <param name="Key">What it is about; parts with one key are replaced together.</param>
/// <param name="Clause">The line it stands in.</param>
/// <param name="Span">The stretch to copy.</param>
/// <param name="Prefix">Words of the line that go before the stretch when it stands alone, such as "but".</param>
internal sealed record LinePart(string Key, ClauseSyntax Clause, SourceSpan Span, string Prefix = "")
{
    /// <summary>What it says, on one line.</summary>
    public string TextIn(SourceText source) => Prefix + string.Join(' ', source.Slice(Span).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
