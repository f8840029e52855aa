namespace ScoreRules.Language.Syntax.Layout;

/// <summary>The three kinds of line.</summary>
internal enum LineKind
{
    /// <summary>Nothing but white space: ends a statement.</summary>
    Blank,

    /// <summary>Starts at the edge: begins a statement.</summary>
    Edge,

    /// <summary>Set in: belongs to the statement above.</summary>
    Inner,
}
