using ScoreRules.Profiles;
using ScoreRules.Tiering;

namespace ScoreRules.Publishing;

/// <summary>One ranking as it is listed: as the judgement's profile sees it, if it has one.</summary>
/// <param name="Ranking">What is listed.</param>
/// <param name="Personal">What the profile did; null without one.</param>
internal sealed record ListedTarget(TargetRanking Ranking, PersonalRanking? Personal)
{
    /// <summary>Rankings as the judgement's profile sees them.</summary>
    public static IReadOnlyList<ListedTarget> Of(Judgement judgement, IReadOnlyList<TargetRanking> whole)
    {
        var view = judgement.Profile is { } profile ? new ProfileView(judgement.Ruleset, judgement.Inferred!, profile) : null;
        return [.. whole.Select(ranking => view?.Of(ranking) is { } personal ? new ListedTarget(personal.Ranking, personal) : new ListedTarget(ranking, null))];
    }
}
