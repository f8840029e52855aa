using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>A name as written; without its quotes.</summary>
internal sealed record NameSyntax(string Text, SourceSpan Span)
{
    /// <summary>The form under which it is looked up.</summary>
    public string Key { get; } = NameText.Key(Text);
}
