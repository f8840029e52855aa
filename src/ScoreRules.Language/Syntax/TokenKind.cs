namespace ScoreRules.Language.Syntax;

/// <summary>Kinds of token inside a line. The eight reserved words have a kind each.</summary>
internal enum TokenKind
{
    Word,
    Quoted,
    Number,
    Version,
    Percent,
    Degree,
    Comma,
    Is,
    Has,
    And,
    Or,
    Not,
    For,
    Means,
    Because,

    /// <summary>Free text to the end of the line.</summary>
    Text,

    /// <summary>Something already reported; the line is not parsed further.</summary>
    Bad,
}
