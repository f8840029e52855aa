namespace ScoreRules.Language.Binding;

/// <summary>What one step of a recipe does with the number so far.</summary>
public enum RecipeOperation
{
    /// <summary>Begins with the operand.</summary>
    StartWith,

    /// <summary>Adds it.</summary>
    Plus,

    /// <summary>Takes it away.</summary>
    Minus,

    /// <summary>Multiplies by it.</summary>
    Times,

    /// <summary>Divides by it; by zero gives unknown.</summary>
    DividedBy,

    /// <summary>Raises to it where lower.</summary>
    AtLeast,

    /// <summary>Lowers to it where higher.</summary>
    AtMost,
}
