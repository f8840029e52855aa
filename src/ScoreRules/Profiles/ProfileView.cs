using ScoreRules.Catalogue;
using ScoreRules.Inference;
using ScoreRules.Language.Binding;
using ScoreRules.Tiering;

namespace ScoreRules.Profiles;

/// <summary>
/// Looks at rankings through a profile. Filtering never changes a score: what does not fit is set aside with its reason.
/// A movement loads a sore joint when it is rated in the upper half of that joint's scale.
/// </summary>
public sealed class ProfileView(BoundRuleset ruleset, InferenceResult inferred, ProfileDefinition profile)
{
    private readonly AttributeDefinition? equipment = ruleset.Attributes.FirstOrDefault(attribute => attribute.Name == WellKnownAttributes.Equipment);

    /// <summary>One ranking as the profile sees it.</summary>
    public PersonalRanking Of(TargetRanking whole)
    {
        var reasons = whole.Placements.Select(placement => (placement, aside: Why(placement.Row))).ToList();
        var left = reasons.Where(pair => pair.aside is null).Select(pair => pair.placement).ToList();
        var rows = left.Select(placement => placement.Row).ToList();
        return new PersonalRanking(
            whole with { Placements = Reranking.WithRanks(left) },
            whole,
            [.. reasons.Select(pair => pair.aside).OfType<SetAsideRow>()],
            profile.Prefer is null ? [] : [.. rows.Where(row => inferred.VerdictOf(profile.Prefer, row.Index) == Verdict.Held)],
            [.. rows.Where(IsUndecided)]);
    }

    private SetAsideRow? Why(PlacementRow row) => MissingKit(row) ?? SoreJoint(row) ?? Avoided(row);

    private SetAsideRow? MissingKit(PlacementRow row)
    {
        if (profile.Kit is not { } kit || equipment is null)
        {
            return null;
        }

        var needed = row.Movement.Facts[equipment.Index].Value;
        var missing = needed.Codes.Where(code => !kit.Contains(code)).Select(code => equipment.Values[code]).ToList();
        return needed.IsKnown && missing.Count > 0 ? new SetAsideRow(row, SetAsideKind.Kit, string.Join(", ", missing)) : null;
    }

    private SetAsideRow? SoreJoint(PlacementRow row)
    {
        foreach (var (joint, stress) in profile.Sore)
        {
            var rated = row.Movement.Facts[stress.Index].Value;
            if (rated.IsKnown && rated.Number > (stress.Scale.Low + stress.Scale.High) / 2)
            {
                return new SetAsideRow(row, SetAsideKind.SoreJoint, joint);
            }
        }

        return null;
    }

    private SetAsideRow? Avoided(PlacementRow row)
    {
        if (profile.Avoid is null || inferred.VerdictOf(profile.Avoid, row.Index) != Verdict.Held)
        {
            return null;
        }

        var trace = ConditionTrace.Explain(profile.Avoid, row.Index, inferred);
        return new SetAsideRow(row, SetAsideKind.Avoid, trace.Parts.First(part => part.Verdict == Verdict.Held).Condition.Location.Text);
    }

    private bool IsUndecided(PlacementRow row) =>
        (profile.Kit is not null && equipment is not null && !row.Movement.Facts[equipment.Index].Value.IsKnown)
        || profile.Sore.Any(sore => !row.Movement.Facts[sore.Stress.Index].Value.IsKnown)
        || (profile.Avoid is not null && inferred.VerdictOf(profile.Avoid, row.Index) == Verdict.CouldNotTell);
}
