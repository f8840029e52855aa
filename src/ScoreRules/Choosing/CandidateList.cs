using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;
using ScoreRules.Profiles;
using ScoreRules.Tiering;

namespace ScoreRules.Choosing;

/// <summary>Who may be chosen: what is ranked in the targets, less what a profile sets aside and what a sum cannot count.</summary>
/// <param name="Candidates">Best rank first, then by name.</param>
/// <param name="Rankings">The rankings behind them, whole.</param>
/// <param name="Personal">The same as the profile sees them; empty without a profile.</param>
/// <param name="NotTold">Movements that cannot be counted in a sum, because nobody recorded the number.</param>
internal sealed record CandidateList(
    ImmutableArray<ChoiceCandidate> Candidates,
    ImmutableArray<TargetRanking> Rankings,
    ImmutableArray<PersonalRanking> Personal,
    ImmutableArray<(Movement Movement, AttributeDefinition Attribute)> NotTold)
{
    /// <summary>The candidates for a request.</summary>
    public static CandidateList Of(Judgement judgement, ChoiceRequest request)
    {
        var rankings = request.Targets.Select(target => judgement.Rankings.First(ranking => ranking.Target.Index == target.Index)).ToImmutableArray();
        var view = judgement.Profile is { } profile ? new ProfileView(judgement.Ruleset, judgement.Inferred!, profile) : null;
        ImmutableArray<PersonalRanking> personal = view is null ? [] : [.. rankings.Select(view.Of)];
        var all = rankings.Select((ranking, index) => view is null ? ranking : personal[index].Ranking)
            .SelectMany(ranking => ranking.Placements).Where(placement => IsMeant(request.Statement?.Info, placement))
            .GroupBy(placement => placement.Row.Movement.Index)
            .Select(group => new ChoiceCandidate(group.First().Row.Movement, [.. group]))
            .OrderBy(candidate => candidate.BestRank).ThenBy(candidate => candidate.Movement.Index).ToList();
        var notTold = all.SelectMany(candidate => request.Totals.Where(total => double.IsNaN(Number(judgement, candidate, total.Attribute))).Take(1).Select(total => (candidate.Movement, total.Attribute))).ToImmutableArray();
        return new CandidateList([.. all.Where(candidate => !notTold.Any(pair => pair.Movement == candidate.Movement))], rankings, personal, notTold);
    }

    /// <summary>A number of a candidate, the highest over its targets; NaN when not recorded.</summary>
    public static double Number(Judgement judgement, ChoiceCandidate candidate, AttributeDefinition attribute)
    {
        var numbers = judgement.Inferred!.Facts.Numbers(attribute);
        return candidate.Placements.Max(placement => numbers[placement.Row.Index]);
    }

    private static bool IsMeant(StatementInfo? info, Placement placement)
    {
        bool Names(ScopeEntry entry) => entry.Target is { } target ? target.Index == placement.Row.Target.Index : NameText.Same(entry.Movement!, placement.Row.Movement.Name);
        return info is null || ((info.OnlyFor.IsEmpty || info.OnlyFor.Any(Names)) && !info.ExceptFor.Any(Names));
    }
}
