namespace ScoreRules.Language.Binding;

/// <summary>How the doubt about a number is spread.</summary>
public enum DoubtShape
{
    /// <summary>No doubt was said.</summary>
    Certain,

    /// <summary><c>give or take</c>: normal around the number.</summary>
    GiveOrTake,

    /// <summary><c>a to b</c>: every number between is as likely.</summary>
    Even,

    /// <summary><c>a to b likely c</c>: a triangle with its top at c.</summary>
    Triangle,
}
