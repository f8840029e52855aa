using System.Collections.Immutable;
using ScoreRules.Catalogue;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Text;
using ScoreRules.Profiles;
using ScoreRules.Tiering;

namespace ScoreRules.Answers.Kit;

/// <summary>Rankings as a profile sees them, for any kit: its sore joints and what it avoids are set aside first.</summary>
internal sealed class KitLists
{
    private readonly ImmutableArray<(TargetRanking Ranking, ImmutableArray<KitNeed> Needs)> lists;

    /// <summary>Looks through a profile.</summary>
    /// <param name="judged">The house, judged for the profile.</param>
    /// <param name="rankings">The rankings to look at.</param>
    /// <param name="profile">The profile; null for nobody in particular.</param>
    public KitLists(Judgement judged, IEnumerable<TargetRanking> rankings, ProfileDefinition? profile)
    {
        Equipment = judged.Ruleset.Attributes.FirstOrDefault(attribute => NameText.Same(attribute.Name, WellKnownAttributes.Equipment));
        var view = profile is null ? null : new ProfileView(judged.Ruleset, judged.Inferred!, profile with { Kit = null });
        lists = [.. rankings.Select(ranking => (ranking, Needs(view is null ? ranking : view.Of(ranking).Ranking)))];
        Used = [.. lists.SelectMany(list => list.Needs).SelectMany(need => need.Needed).Distinct().Order()];
    }

    /// <summary>The attribute that lists kit; null when the house has none.</summary>
    public AttributeDefinition? Equipment { get; }

    /// <summary>Kit that some movement needs, as codes.</summary>
    public ImmutableArray<int> Used { get; }

    /// <summary>The rankings.</summary>
    public IEnumerable<TargetRanking> Rankings => lists.Select(list => list.Ranking);

    /// <summary>What can be done with some kit in one target, best first.</summary>
    public IEnumerable<Placement> Left(TargetRanking ranking, ImmutableHashSet<int> kit) =>
        lists.First(list => ReferenceEquals(list.Ranking, ranking)).Needs.Where(need => need.IsPossible(kit)).Select(need => need.Placement);

    private ImmutableArray<KitNeed> Needs(TargetRanking ranking) => [.. ranking.Placements.Select(placement => new KitNeed(placement, Needed(placement.Row.Movement)))];

    private ImmutableArray<int> Needed(Movement movement) => Equipment is { } equipment ? movement.Facts[equipment.Index].Value.Codes : [];
}
