namespace ScoreRules.Language.Binding;

/// <summary>Kinds of attribute.</summary>
public enum AttributeKind
{
    /// <summary>A rating on a scale, such as 0 to 4.</summary>
    Rating,

    /// <summary>A number with a unit.</summary>
    Measure,

    /// <summary>One word of a list.</summary>
    OneOf,

    /// <summary>Any number of words of a list.</summary>
    SomeOf,
}
