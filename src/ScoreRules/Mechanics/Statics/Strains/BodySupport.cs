using System.Collections.Immutable;

namespace ScoreRules.Mechanics.Statics.Strains;

/// <summary>How the body is held and loaded.</summary>
/// <param name="SupportPoints">Number of different places that hold the body, 0 or more.</param>
/// <param name="IsOneSided">Whether one side works at a time, so that the trunk must resist turning.</param>
public sealed record BodySupport(int SupportPoints, bool IsOneSided)
{
    /// <summary>Reads the words of the rule vocabulary.</summary>
    /// <param name="supports">Such as "feet", "back", "one hand"; a place said twice counts once.</param>
    /// <param name="laterality">"bilateral", "independent", "alternating" or "unilateral".</param>
    public static BodySupport Of(ImmutableArray<string> supports, string laterality) =>
        new(supports.Distinct(StringComparer.Ordinal).Count(), laterality is "unilateral" or "alternating");
}
