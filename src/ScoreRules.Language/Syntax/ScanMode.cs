namespace ScoreRules.Language.Syntax;

/// <summary>Where free text begins in the rest of a line.</summary>
internal enum ScanMode
{
    /// <summary>Tokens; free text only after <c>because</c>.</summary>
    Tokens,

    /// <summary>The whole rest is free text.</summary>
    Text,

    /// <summary>Free text after the first number, as in <c>people 20 trained adults</c>.</summary>
    TextAfterNumber,

    /// <summary>Free text after the word <c>by</c>, as in <c>checked 4 May 2031 by a second coach</c>.</summary>
    TextAfterBy,
}
