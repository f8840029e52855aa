namespace ScoreRules.Language;

/// <summary>How an attribute is compared in a condition.</summary>
public enum Comparison
{
    /// <summary>Not a comparison: the name of a called fact.</summary>
    Called,

    /// <summary><c>is X</c>.</summary>
    Is,

    /// <summary><c>is other than X</c>.</summary>
    OtherThan,

    /// <summary><c>is at least N</c>.</summary>
    AtLeast,

    /// <summary><c>is at most N</c>.</summary>
    AtMost,

    /// <summary><c>is more than N</c>.</summary>
    MoreThan,

    /// <summary><c>is less than N</c>.</summary>
    LessThan,

    /// <summary><c>is between N and M</c>, both ends included.</summary>
    Between,

    /// <summary><c>is one of A, B</c>.</summary>
    OneOf,

    /// <summary><c>is none of A, B</c>.</summary>
    NoneOf,

    /// <summary><c>is known</c>.</summary>
    Known,

    /// <summary><c>is unknown</c>.</summary>
    Unknown,

    /// <summary><c>has any of A, B</c> (also <c>has A</c>).</summary>
    HasAny,

    /// <summary><c>has all of A, B</c>.</summary>
    HasAll,

    /// <summary><c>has none of A, B</c>.</summary>
    HasNone,
}
