using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax;

/// <summary>A token and where it stands, for those who look at text without parsing it.</summary>
/// <param name="Kind">Its kind.</param>
/// <param name="Span">Its characters; the quotes round a free text are left out.</param>
internal readonly record struct ScannedToken(TokenKind Kind, SourceSpan Span);
