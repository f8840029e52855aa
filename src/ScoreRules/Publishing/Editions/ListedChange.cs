namespace ScoreRules.Publishing.Editions;

/// <summary>A change between two editions.</summary>
/// <param name="Target">The target.</param>
/// <param name="Kind">What happened.</param>
/// <param name="Before">How it stood; null for what is new.</param>
/// <param name="After">How it stands; null for what is gone.</param>
public sealed record ListedChange(string Target, ChangeKind Kind, PublishedPlacement? Before, PublishedPlacement? After)
{
    /// <summary>The movement.</summary>
    public string Movement => (After ?? Before)!.Movement;
}
