using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Comparing;

/// <summary>A caution that only one house has, or that reaches other movements now.</summary>
/// <param name="Text">The message.</param>
/// <param name="Old">The caution of the old house; null when it is added.</param>
/// <param name="New">The caution of the new house; null when it is lost.</param>
/// <param name="NoLonger">Movements of both houses beside which it is no longer shown, by name.</param>
/// <param name="Newly">Movements of both houses beside which it is shown now and was not, by name.</param>
public sealed record CautionChange(string Text, CautionDefinition? Old, CautionDefinition? New, ImmutableArray<string> NoLonger, ImmutableArray<string> Newly)
{
    /// <summary>Whether something that protected somebody is gone: the caution, its seriousness, or a movement it was shown beside.</summary>
    public bool IsLoss => New is null || NoLonger.Length > 0 || (Old is not null && New.Severity < Old.Severity);
}
