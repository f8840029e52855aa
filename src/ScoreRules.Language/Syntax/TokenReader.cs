using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;
using Superpower.Model;

namespace ScoreRules.Language.Syntax;

/// <summary>The tokens of (part of) one line that is known to be sound; what the scanner would report is not reported again.</summary>
internal sealed class TokenReader(SourceText source)
{
    private readonly LineScanner scanner = new(source, new DiagnosticBag());

    /// <summary>The tokens of a stretch of one line.</summary>
    public IReadOnlyList<ScannedToken> Read(SourceSpan line, ScanMode mode)
    {
        var tokens = new List<Token<TokenKind>>();
        scanner.Scan(line, mode, tokens, ("", null));
        return [.. tokens.Select(token => new ScannedToken(token.Kind, Parsers.Spans.Of(token)))];
    }
}
