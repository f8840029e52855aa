using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Guarding.Breaking;

/// <summary>
/// Every way in which a ruleset is broken, one thing at a time. Cautions, refusals and reasons that cancel out are left alone: they move no
/// placement, so no expectation could notice.
/// </summary>
public static class Breakages
{
    /// <summary>All of them, by the kind of statement, each kind in the order of the house.</summary>
    public static ImmutableArray<Breakage> Of(BoundRuleset ruleset) =>
    [
        .. CriterionBreakages.Of(ruleset),
        .. CallBreakages.Of(ruleset),
        .. RecipeBreakages.Of(ruleset),
        .. AwardBreakages.Of(ruleset),
        .. LimitBreakages.Of(ruleset),
        .. ExclusionBreakages.Of(ruleset),
        .. TierBreakages.Of(ruleset),
        .. PlaceBreakages.Of(ruleset),
        .. EvidenceBreakages.Of(ruleset),
        .. StudyBreakages.Of(ruleset),
    ];
}
