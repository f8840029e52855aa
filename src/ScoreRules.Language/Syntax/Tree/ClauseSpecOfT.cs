using ScoreRules.Language.Text;
using Superpower;
using Superpower.Model;

namespace ScoreRules.Language.Syntax.Tree;

/// <summary>A kind of line whose rest parses to a <typeparamref name="T"/>.</summary>
#pragma warning disable MA0048 // the generic twin of ClauseSpec
internal sealed class ClauseSpec<T>(string starter, TokenListParser<TokenKind, T> parser, ScanMode mode = ScanMode.Tokens) : ClauseSpec(starter, mode)
#pragma warning restore MA0048
{
    /// <inheritdoc/>
    public override ClauseSyntax? Parse(TokenList<TokenKind> rest, SourceSpan line)
    {
        var result = parser(rest);
        if (!result.HasValue)
        {
            return null;
        }

        if (!result.Remainder.IsAtEnd)
        {
            FurthestFailure.Note(result.Remainder.Position, new Expectation("the end of the line", Literal: false));
            return null;
        }

        return new ClauseSyntax<T>(this, line, result.Value);
    }
}
