namespace ScoreRules.Language.Binding;

/// <summary>How an author places a movement by judgement.</summary>
public enum PlaceKind
{
    /// <summary>A point below another movement, unless something separates the two.</summary>
    JustBelow,

    /// <summary>A point above another movement, unless something separates the two.</summary>
    JustAbove,

    /// <summary>Level with another movement.</summary>
    Beside,

    /// <summary>One tier higher than its points and limits say.</summary>
    OneTierHigher,

    /// <summary>One tier lower than its points and limits say.</summary>
    OneTierLower,
}
