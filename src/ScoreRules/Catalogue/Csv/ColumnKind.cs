namespace ScoreRules.Catalogue.Csv;

/// <summary>What the cells of a column say.</summary>
internal enum ColumnKind
{
    /// <summary>Nothing that can be used; reported at the heading.</summary>
    Unusable,

    /// <summary>No heading: its cells must be blank.</summary>
    Unheaded,

    /// <summary>The movement's name.</summary>
    Movement,

    /// <summary>Its other names.</summary>
    AlsoKnownAs,

    /// <summary>The targets it trains.</summary>
    Trains,

    /// <summary>The movement it is like.</summary>
    Like,

    /// <summary>Where its facts come from.</summary>
    Source,

    /// <summary>A remark for readers of the table.</summary>
    Note,

    /// <summary>A fact.</summary>
    Fact,
}
