namespace ScoreRules.Language;

/// <summary>How a word's number is meant.</summary>
public enum SayBound
{
    /// <summary>The number itself.</summary>
    Exactly,

    /// <summary>That number or more.</summary>
    AtLeast,

    /// <summary>That number or less, either way.</summary>
    Within,
}
