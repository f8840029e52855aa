namespace ScoreRules.Choosing;

/// <summary>Something that a choice must keep. Candidates are meant by their positions.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Name">The fact, the condition, the attribute or the group, in the author's words.</param>
public abstract record ChoiceLimit(ChoiceLimitKind Kind, string Name)
{
    /// <summary>The number in it: how many at least, or the most in its own unit; NaN without one.</summary>
    public double Amount { get; init; } = double.NaN;

    /// <summary>Unit of <see cref="Amount"/>; null without one.</summary>
    public string? Unit { get; init; }

    /// <summary>Whether a choice keeps it.</summary>
    public abstract bool Allows(IReadOnlyCollection<int> chosen);
}
