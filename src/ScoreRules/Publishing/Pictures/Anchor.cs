namespace ScoreRules.Publishing.Pictures;

/// <summary>Which part of words stands at their spot.</summary>
internal enum Anchor
{
    /// <summary>Their start.</summary>
    Start,

    /// <summary>Their middle.</summary>
    Middle,

    /// <summary>Their end.</summary>
    End,
}
