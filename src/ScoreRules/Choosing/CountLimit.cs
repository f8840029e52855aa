namespace ScoreRules.Choosing;

/// <summary>No more than so many in all.</summary>
/// <param name="Most">How many.</param>
public sealed record CountLimit(int Most) : ChoiceLimit(ChoiceLimitKind.Count, "")
{
    /// <inheritdoc/>
    public override bool Allows(IReadOnlyCollection<int> chosen) => chosen.Count <= Most;
}
