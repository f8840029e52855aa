using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>A value or a name: what may follow "is".</summary>
internal sealed record OperandSyntax(ValueSyntax? Value, NameSyntax? Name)
{
    /// <summary>Where it stands.</summary>
    public SourceSpan Span => Value?.Span ?? Name!.Span;
}
